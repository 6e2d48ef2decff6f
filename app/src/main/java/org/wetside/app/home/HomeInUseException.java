package org.wetside.app.home;

import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.wetside.app.CannotDoException;

/** Another process writes in this home; says which. */
public final class HomeInUseException extends CannotDoException {
  private static final long serialVersionUID = 1L;

  private final transient Optional<Holder> holder;

  HomeInUseException(Home home, Optional<Holder> holder) {
    super(message(home, holder));
    this.holder = holder;
  }

  /** Who holds it, if it could be read. */
  public Optional<Holder> holder() {
    return holder;
  }

  private static String message(Home home, Optional<Holder> holder) {
    String who =
        holder
            .map(
                h ->
                    "process "
                        + h.pid()
                        + " since "
                        + h.since().truncatedTo(ChronoUnit.SECONDS)
                        + h.address().map(a -> ", serving at " + a).orElse(""))
            .orElse("another process");
    return "the data folder "
        + home.folder()
        + " is in use by "
        + who
        + ". Nothing was changed. Use that server, or stop it first.";
  }
}
