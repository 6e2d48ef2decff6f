/**
 * The trade itself: quantities, models, timelines, the fold of a run and the plan of a load.
 *
 * <p>Nothing here reads a file, a clock, a database or a socket. Numbers come in as arguments and
 * leave as values.
 */
module org.wetside.core {
  requires static org.jspecify;
  requires hipparchus.core;
  requires hipparchus.optim;
  requires hipparchus.fitting;

  exports org.wetside.core.chemistry;
  exports org.wetside.core.development;
  exports org.wetside.core.learning;
  exports org.wetside.core.plan;
  exports org.wetside.core.quantity;
  exports org.wetside.core.source;
  exports org.wetside.core.sensitometry;
  exports org.wetside.core.instrument;
  exports org.wetside.core.strip;
  exports org.wetside.core.thermal;
  exports org.wetside.core.bath;
  exports org.wetside.core.shelf;
  exports org.wetside.core.process;
  exports org.wetside.core.run;
  exports org.wetside.core.hands;
  exports org.wetside.core.safety;
  exports org.wetside.core.trial;
  exports org.wetside.core.waste;
  exports org.wetside.core.wash;
}
