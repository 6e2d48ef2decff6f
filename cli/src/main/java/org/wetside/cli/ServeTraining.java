package org.wetside.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.HttpURLConnection;
import java.net.URI;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.wetside.app.home.Home;
import org.wetside.app.home.ServerAddress;

/** Serves an empty home for a moment and looks at every place, for the class-data archive. */
final class ServeTraining {
  static final List<String> PAGES =
      List.of("/", "/drawer", "/bench", "/shelf", "/times", "/negatives", "/equipment");

  private static final int TRIES = 300;
  private static final long PAUSE_MILLIS = 100;

  private ServeTraining() {}

  /** Returns when the server has let go of the home. */
  static void run(Path home) throws IOException, InterruptedException {
    PrintWriter discarded = new PrintWriter(new StringWriter());
    Thread server =
        new Thread(
            () ->
                new Main(discarded, discarded)
                    .run("serve", "--port", "0", "--home", home.toString()),
            "training");
    server.setDaemon(true);
    server.start();
    try {
      ServerAddress address = waitFor(new Home(home));
      for (String page : PAGES) {
        look(address.address() + page);
      }
    } finally {
      server.interrupt();
      server.join();
    }
  }

  private static ServerAddress waitFor(Home home) throws InterruptedException {
    for (int i = 0; i < TRIES; i++) {
      Optional<ServerAddress> address = ServerAddress.read(home);
      if (address.isPresent()) {
        return address.get();
      }
      Thread.sleep(PAUSE_MILLIS);
    }
    throw new IllegalStateException("the server did not start");
  }

  private static void look(String page) throws IOException {
    HttpURLConnection connection = (HttpURLConnection) URI.create(page).toURL().openConnection();
    if (connection.getResponseCode() < HttpURLConnection.HTTP_BAD_REQUEST) {
      try (InputStream body = connection.getInputStream()) {
        body.readAllBytes();
      }
    }
    connection.disconnect();
  }
}
