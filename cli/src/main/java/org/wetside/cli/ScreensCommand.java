package org.wetside.cli;

import java.io.PrintWriter;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.pairing.PairedScreenView;
import org.wetside.web.pairing.PairedScreensView;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code wetside screens}: who is let in over the network. */
@Command(
    name = "screens",
    description = "List the screens that are let in over the network, shut one out.")
final class ScreensCommand extends HomeCommand<PairedScreensView> {
  @Option(names = "--remove", paramLabel = "NUMBER", description = "shut this one out")
  @Nullable String remove;

  @Override
  boolean writes() {
    return remove != null;
  }

  @Override
  PairedScreensView answerHere(Wetside wetside) {
    if (remove != null) {
      wetside.removeScreen().remove(number(remove));
    }
    return PairedScreensView.of(wetside);
  }

  @Override
  ServerRequest request() {
    return remove == null
        ? ServerRequest.get("/api/screens")
        : new ServerRequest("DELETE", "/api/screens/" + number(remove), "", "");
  }

  private static long number(String text) {
    try {
      return Long.parseLong(text.strip());
    } catch (NumberFormatException notOne) {
      throw new BadValueException("screen", text, "its number, as the list shows it");
    }
  }

  @Override
  Class<PairedScreensView> view() {
    return PairedScreensView.class;
  }

  @Override
  void print(PairedScreensView view, PrintWriter out) {
    if (view.screens().isEmpty()) {
      out.println("No other screen is let in.");
    }
    for (PairedScreenView one : view.screens()) {
      out.println(
          one.id()
              + "  "
              + one.name()
              + "  paired "
              + one.pairedAt()
              + ", last seen "
              + one.seenAt());
    }
  }
}
