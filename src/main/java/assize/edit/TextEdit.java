package assize.edit;

import assize.text.Span;

/**
 * One piece of text that is put in or replaced.
 *
 * @param at what it replaces; empty for what is put in between
 * @param text what stands there afterwards
 */
public record TextEdit(Span at, String text) {}
