/**
 * Judges how authentic a restored vehicle is, detail by detail, against a written standard.
 *
 * <p>Data flows one way. To see the whole, read {@code cli.JudgeCommand}, {@code judge.Judge} and
 * {@code report.vehicle.ReportViewFactory}, in this order.
 *
 * <ul>
 *   <li>{@code text}: files as a person typed them, and where in them a thing stands
 *   <li>{@code date}, {@code measure}: dates as spans of days; sizes, colors and gloss
 *   <li>{@code diagnostic}: what is wrong with a person's text, and where
 *   <li>{@code yaml}: a file as a tree with its places
 *   <li>{@code schema}: which names rule sets and records have, and what is written under each
 *   <li>{@code pattern}: what a pattern of numbers can match
 *   <li>{@code aspect}: what can be looked at, what is expected, what was found
 *   <li>{@code evidence}: who says what is right, and what it comes to together
 *   <li>{@code ruleset}, {@code record}: one standard; one vehicle
 *   <li>{@code production}: which vehicles there can be by a rule set
 *   <li>{@code judgment}: what judging gave
 *   <li>{@code edit}: changes a record's text and keeps every other letter
 *   <li>{@code merge}: what friends filled in against a record
 *   <li>{@code check}: warnings about rule sets and records
 *   <li>{@code judge}: judges
 *   <li>{@code timeline}: what sources come to over the whole production
 *   <li>{@code compare}: what changed between two editions
 *   <li>{@code image}: pictures of evidence
 *   <li>{@code redaction}: the copy for others
 *   <li>{@code report.view}, {@code report.chart}, {@code report.html}, {@code report.text}: says
 *       it
 *   <li>{@code report.vehicle}, {@code report.handbook} and so on: one page each, with all that
 *       only it needs
 *   <li>{@code spreadsheet}: the inspection sheet as a table
 *   <li>{@code clidoc}: completions for shells, and the manual
 *   <li>{@code newrecord}: a record to fill in
 *   <li>{@code cli}: the command line
 * </ul>
 */
@NullMarked
package assize;

import org.jspecify.annotations.NullMarked;
