package assize.diagnostic;

import assize.text.Span;

/**
 * Another place that has to do with it.
 *
 * @param words what is there, such as "first written here"
 */
public record RelatedLocation(Span at, String words) {}
