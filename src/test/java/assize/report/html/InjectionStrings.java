package assize.report.html;

import java.util.List;

/** One text of each class by which a page has been made to do what its reader did not ask for. */
enum InjectionStrings {
  ATTRIBUTE("\" autofocus tabindex=1 onfocus=alert(1) x=\""),
  ATTRIBUTE_IN_SINGLE_QUOTES("' onpointerenter='alert(1)"),
  TAG_WITHOUT_END("<a autofocus onfocus=alert(1) href=\"javascript:alert(1)\" x="),
  SCRIPT("</script><script>alert(1)</script>"),
  STYLE("</style><style>.x{background:url(https://example.org/a)}</style>"),
  STYLE_VALUE("0;} @import 'https://example.org/a'; p{background:url(https://example.org/b)"),
  COMMENT("--><b onclick=alert(1)>x</b><!--"),
  COMMENT_WITHOUT_END("<!-- <![CDATA[ <?x <% {{7+7}}"),
  CDATA("]]><svg onload=alert(1)>"),
  ENDS_OF_RAW_TEXT("</title></textarea></noscript></pre><img src=x onerror=alert(1)>"),
  SVG("<svg><use href=https://example.org/a.svg#x /><script href=\"data:,alert(1)\" /></svg>"),
  MATHS("<math><mtext><table><mglyph><style><img src=x onerror=alert(1)></style></table></math>"),
  FRAME("<iframe srcdoc=\"<script>parent.alert(1)</script>\"></iframe>"),
  OTHER_HOME("<base href=https://example.org/><link rel=stylesheet href=a.css>"),
  SENT_ELSEWHERE("<meta http-equiv=refresh content='0;url=https://example.org/'>"),
  FORM("<form action=https://example.org/><input name=a><button formaction=/b>x</button></form>"),
  NAMES_OF_THE_PAGE("<a id=data name=data></a><p id=top class=item>x</p><img name=getElementById>"),
  ENTITIES(
      "&lt;img src=x onerror=alert(1)&gt; &#60;b&#62; &amp;amp;",
      "<img src=x onerror=alert(1)> <b> &amp;"),
  TEMPLATE("${.data_model?size} <#assign x=1> [=7+7] <@m.signs/> #{7} ${\"a\"?new()}"),
  DATA("\"}]},\"x\":{\"y\":[{\"</pre><script>alert(1)</script>"),
  UTF_7("+ADw-script+AD4-alert(1)+ADw-/script+AD4-"),
  FORMULA("=HYPERLINK(\"https://example.org/?\"&A1,\"press\")"),
  FORMULA_BY_AT("@SUM(1+9)|'x'!A0"),
  OTHER_SIGNS("\uff1cscript\uff1ealert(1)\uff1c/script\uff1e \u02bconx=1 \u2028alert(1)\u2029"),
  HIDDEN_LETTERS("<scr\u200bipt>alert(1)</scr\u200bipt> \u200f\u061c<\u00ad/b>"),
  LINK_THAT_RUNS("[press](javascript:alert(1))", "press"),
  LINK_THAT_RUNS_BY_CODE("[press](&#x6A;ava&Tab;Script&colon;alert(1))", "press"),
  LINK_TO_A_PAGE_WITHIN("[press](data:text/html,<script>alert(1)</script>)", "press"),
  LINK_TO_A_FILE("[press](file:///etc/hosts) [or](//example.org/a)", "press or"),
  LINK_BY_NAME("[press][1]\n\n[1]: javascript:alert(1)\n\n", "press"),
  LINK_AS_WRITTEN("<javascript:alert(1)>", "javascript:alert(1)"),
  PICTURE("![seen](https://example.org/seen.png)", "seen"),
  TITLE_OF_A_LINK("[press](https://example.org/ 'x\" onclick=\"alert(1)')", "press"),
  FENCE(
      "```x\" onclick=alert(1)\n</code></pre><script>alert(1)</script>\n```\n\n",
      "</code></pre><script>alert(1)</script>");

  private final String text;
  private final String asNote;

  InjectionStrings(String text) {
    this(text, text);
  }

  /**
   * Keeps an attack.
   *
   * @param asNote what a reader sees of it where a note's Markdown is read
   */
  InjectionStrings(String text, String asNote) {
    this.text = text;
    this.asNote = asNote;
  }

  String text() {
    return text;
  }

  String asNote() {
    return asNote;
  }

  static List<InjectionStrings> all() {
    return List.of(values());
  }
}
