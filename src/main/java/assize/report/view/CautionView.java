package assize.report.view;

import java.util.List;

/** A caution, its usual precaution, and the items that carry it. */
public record CautionView(String anchor, String name, String precaution, List<LinkView> items) {}
