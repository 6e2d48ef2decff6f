package org.wetside.cli;

import java.io.PrintWriter;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.wetside.app.testroll.TestRollReader;
import org.wetside.core.quantity.Units;
import org.wetside.web.testroll.TestRollQuery;
import org.wetside.web.testroll.TestRollSheet;
import org.wetside.web.testroll.TestRollText;
import org.wetside.web.testroll.TestRollView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code wetside testroll "TRI-X 400" --metered 1/60@f8 --middle 8min --sheet roll.pdf}. */
@Command(
    name = "testroll",
    description = "Plan a roll that measures a film: what to expose, where to cut, how long.")
final class TestrollCommand extends ViewCommand<TestRollView> {
  @Parameters(arity = "0..1", paramLabel = "FILM", description = "the film, in your words")
  @Nullable String film;

  @Option(names = "--ei", paramLabel = "EI", description = "exposure index the meter is set to")
  @Nullable String index;

  @Option(
      names = "--metered",
      paramLabel = "PAIR",
      description = "what it says for the card, for example 1/60@f8")
  @Nullable String metered;

  @Option(
      names = "--middle",
      paramLabel = "TIME",
      description = "time of the second piece, for example 8min")
  @Nullable String middle;

  @Option(names = "--developer", paramLabel = "NAME", description = "in your words")
  @Nullable String developer;

  @Option(names = "--dilution", paramLabel = "D", description = "stock, 1+1 or a letter")
  @Nullable String dilution;

  @Option(names = "--temp", paramLabel = "TEMP", description = "of the developer")
  @Nullable String temp;

  @Option(names = "--vessel", paramLabel = "V", description = "small, large, rotary or tray")
  @Nullable String vessel;

  @Option(names = "--frames", paramLabel = "N", description = "on the roll; 36 when not said")
  @Nullable String frames;

  @Option(
      names = "--fastest",
      paramLabel = "SPEED",
      description = "fastest shutter speed; 1/1000 when not said")
  @Nullable String fastest;

  @Option(
      names = "--slowest",
      paramLabel = "SPEED",
      description = "slowest shutter speed; 1/2 when not said, and not longer")
  @Nullable String slowest;

  @Option(names = "--widest", paramLabel = "F", description = "widest aperture; f/2 when not said")
  @Nullable String widest;

  @Option(
      names = "--smallest",
      paramLabel = "F",
      description = "smallest aperture; f/16 when not said")
  @Nullable String smallest;

  @Option(names = "--sheet", paramLabel = "FILE", description = "write the sheet to print")
  @Nullable String sheet;

  @Option(names = "--paper", paramLabel = "PAPER", description = "a4 when not said, or letter")
  @Nullable String paper;

  @Option(names = "--force", description = "replace the file if it is there")
  boolean force;

  @Override
  TestRollView answer() {
    Optional<PaperFile> file = PaperFile.of("file of the sheet", sheet, force);
    TestRollView view =
        TestRollView.of(
            new TestRollReader(Units.METRIC)
                .require(
                    new TestRollQuery(
                            film, index, metered, middle, developer, dilution, temp, vessel, frames,
                            fastest, slowest, widest, smallest)
                        .draft()));
    file.ifPresent(to -> to.write(TestRollSheet.pdf(view, Units.METRIC, paper)));
    return view;
  }

  @Override
  void print(TestRollView view, PrintWriter out) {
    if (sheet == null) {
      out.print(TestRollText.of(view));
      out.flush();
    } else {
      out.println(sheet + ": the sheet of a test roll");
    }
  }
}
