package org.wetside.benchmark;

import org.wetside.app.times.TimeRequest;

/** Requests as people type them, one for each kind of way to an answer. */
public enum Asked {
  /** Stands in a table as asked. */
  PRINTED("T-MAX 400", "D-76", "stock", "400", "68F", "rotary"),
  /** Between two printed temperatures. */
  OTHER_TEMPERATURE("T-MAX 400", "D-76", "stock", "400", "71F", "rotary"),
  /** At an index between two printed ones. */
  PUSHED("TRI-X 400", "D-76", "stock", "800", "20C", "small"),
  /** In a dilution no table of this film and tank has. */
  OTHER_DILUTION("T-MAX 400", "D-76", "1+1", "400", "20C", "rotary"),
  /** In a tank no table of this film and developer has. */
  OTHER_VESSEL("TRI-X 400", "XTOL", "1+1", "400", "20C", "rotary"),
  /** Far outside every temperature: no honest time, with the nearest entries and a clip test. */
  REFUSED("TRI-X 400", "D-76", "stock", "400", "30C", "small");

  private final String film;
  private final String developer;
  private final String dilution;
  private final String ei;
  private final String temp;
  private final String vessel;

  Asked(String film, String developer, String dilution, String ei, String temp, String vessel) {
    this.film = film;
    this.developer = developer;
    this.dilution = dilution;
    this.ei = ei;
    this.temp = temp;
    this.vessel = vessel;
  }

  /** The question as typed. */
  public TimeRequest request() {
    return new TimeRequest(film, developer, dilution, ei, temp, vessel, "", "", "", false);
  }
}
