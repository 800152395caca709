package assize.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** What can be wanted of reports, whichever command makes them. */
final class ReportOptions {
  @Option(
      names = "--redact",
      description =
          "Write the copies for others: without what is private, ends of numbers masked, checked.")
  private boolean redact;

  @Option(
      names = "--photos",
      paramLabel = "embed|folder",
      description =
          "Where the photos go: into the report, or into a folder beside it; default: embed.")
  private Place photos = Place.embed;

  @Option(
      names = "--skip-bad-photos",
      description = "Make the report even where a photo can't be shown; it says so.")
  private boolean skipBadPhotos;

  @Spec(Spec.Target.MIXEE)
  private CommandSpec spec = CommandSpec.create();

  /** Where photos go, as it is typed. */
  private enum Place {
    embed,
    folder
  }

  /**
   * Returns what is wanted.
   *
   * @param out the folder that was typed
   * @throws ParameterException if it can't be had together
   */
  ReportWriter.ReportOptions wanted(Optional<Path> out, Optional<String> json) {
    if (redact && photos == Place.folder) {
      throw new ParameterException(
          spec.commandLine(),
          "--redact: the copy for others is one file; leave --photos folder out");
    }
    json.flatMap(ArgumentNormalizer::refusedForJson)
        .ifPresent(
            reason -> {
              throw new ParameterException(spec.commandLine(), reason);
            });
    // To standard output alone, no page is written, and a link does no harm.
    Path folder =
        json.equals(Optional.of("-"))
            ? out.orElse(Path.of(""))
            : out.orElseGet(AtomicFileWriter::reports);
    return new ReportWriter.ReportOptions(
        folder, json, skipBadPhotos, photos == Place.folder, redact);
  }
}
