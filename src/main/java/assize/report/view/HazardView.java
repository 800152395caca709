package assize.report.view;

import java.util.List;

/** A hazard, its usual precaution, and the items that carry it. */
public record HazardView(String anchor, String name, String precaution, List<LinkView> items) {}
