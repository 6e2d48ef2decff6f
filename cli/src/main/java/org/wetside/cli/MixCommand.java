package org.wetside.cli;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.app.mixing.Mix;
import org.wetside.core.bath.StockMinimum;
import org.wetside.core.quantity.Units;
import org.wetside.web.mixing.CautionView;
import org.wetside.web.mixing.MixQuery;
import org.wetside.web.mixing.MixView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code wetside mix 1+31 --total 256mL}. */
@Command(name = "mix", description = "Say how much concentrate and how much water to measure out.")
final class MixCommand extends HomeCommand<MixView> {
  @Parameters(paramLabel = "DILUTION", description = "for example 1+31 or stock")
  @Nullable String dilution;

  @Option(names = "--total", paramLabel = "VOLUME", description = "for example 256mL")
  @Nullable String total;

  @Option(
      names = "--of",
      paramLabel = "NAME",
      description = "what is in the bottle, for its cautions and its minimum of stock")
  @Nullable String of;

  @Option(
      names = "--rolls",
      paramLabel = "N",
      description = "film for it: 135-36 and 120 count 1, 135-24 counts 0.75")
  @Nullable String rolls;

  @Option(
      names = "--package",
      paramLabel = "VOLUME",
      description = "stock that the whole package of powders makes, for example 1L")
  @Nullable String packageMakes;

  @Option(
      names = "--minimum",
      paramLabel = "VOLUME",
      description = "the maker's minimum of stock for one roll, for example 6mL")
  @Nullable String minimum;

  /** Only a named developer has a minimum in the home's book. */
  @Override
  Optional<MixView> answerAnywhere() {
    return of == null || minimum != null
        ? Optional.of(answer(developer -> Optional.empty()))
        : Optional.empty();
  }

  @Override
  MixView answerHere(Wetside wetside) {
    return answer(wetside.keepMinimum()::find);
  }

  private MixView answer(Function<String, Optional<StockMinimum>> book) {
    return MixView.of(
        new Mix()
            .answer(new MixQuery(dilution, total, of, rolls, minimum, packageMakes).question(book)),
        Units.METRIC);
  }

  @Override
  ServerRequest request() {
    return ServerRequest.get("/api/mix")
        .with("dilution", dilution)
        .with("total", total)
        .with("of", of)
        .with("rolls", rolls)
        .with("packageMakes", packageMakes);
  }

  @Override
  Class<MixView> view() {
    return MixView.class;
  }

  @Override
  void print(MixView view, PrintWriter out) {
    out.println(view.dilution() + " for " + Metric.volume(view.totalMl()));
    out.println("  concentrate  " + Metric.volume(view.concentrateMl()));
    out.println("  water        " + Metric.volume(view.waterMl()));
    if (view.stock() != null) {
      out.println("  " + view.stock().text());
      if (view.stock().standing() != null) {
        out.println("  minimum: " + view.stock().standing() + ", " + view.stock().source());
      }
    }
    for (MixView.WarningView warning : view.warnings()) {
      out.println(
          "Warning: " + warning.text() + " (" + warning.standing() + ", " + warning.source() + ")");
    }
    for (CautionView caution : view.cautions()) {
      out.println("Caution: " + caution.text());
    }
  }
}
