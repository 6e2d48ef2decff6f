package org.wetside.web.bench;

import java.util.ArrayList;
import java.util.List;
import org.wetside.app.Wetside;
import org.wetside.core.shelf.BottleLabel;
import org.wetside.core.trial.Trial;
import org.wetside.core.trial.TrialKind;

/** The baths that can be tested at the Bench, those whose test runs in front. */
final class TestLines {
  private static final String PATH = "/bench/test/";
  private static final String FILM = PATH + "film";

  private final Wetside wetside;

  TestLines(Wetside wetside) {
    this.wetside = wetside;
  }

  List<BenchListPage.TestLine> all() {
    List<BenchListPage.TestLine> running = new ArrayList<>();
    List<BenchListPage.TestLine> others = new ArrayList<>();
    List<Trial> open = wetside.bathTests().findTests().running();
    wetside
        .listBottles()
        .all()
        .forEach(
            bottle -> {
              BottleLabel label = bottle.label();
              boolean runs = open.stream().anyMatch(one -> one.bottle().equals(label.letter()));
              if (runs || !TrialKind.of(label.bath()).isEmpty()) {
                (runs ? running : others)
                    .add(
                        new BenchListPage.TestLine(
                            PATH + label.letter(),
                            "bottle " + label.letter() + ", " + label.contents(),
                            runs));
              }
            });
    boolean ofFilm = open.stream().anyMatch(one -> one.kind().ofFilm());
    (ofFilm ? running : others).add(new BenchListPage.TestLine(FILM, "washed film", ofFilm));
    running.addAll(others);
    return running;
  }
}
