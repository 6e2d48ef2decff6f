package org.wetside.web;

import io.javalin.config.RoutesConfig;

/** The pages and the interface of one place; registered once, before the server starts. */
public interface Routes {
  /** Adds this place's handlers. Must not open or compute anything: start-up waits for it. */
  void register(RoutesConfig routes);

  /** Ends what goes on beside requests; called before the server stops listening. */
  default void close() {}
}
