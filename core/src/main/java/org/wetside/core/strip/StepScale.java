package org.wetside.core.strip;

import java.util.List;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.ExposureIndex;
import org.wetside.core.quantity.LogExposure;
import org.wetside.core.quantity.OpticalDensity;
import org.wetside.core.quantity.Stops;
import org.wetside.core.sensitometry.ExposureSeries;

/** What the places of a strip are counted in, and how a place becomes a log exposure. */
public sealed interface StepScale
    permits StepScale.LogExposures, StepScale.TabletSteps, StepScale.CameraStops {

  /** Name of the column of places: {@code logH}, {@code step} or {@code stops}. */
  String column();

  /**
   * The log exposure at a place.
   *
   * @throws BadValueException when the scale has no such place
   */
  LogExposure at(double place);

  /** Places are log10 of lux seconds already. */
  record LogExposures() implements StepScale {
    /** Name of its column. */
    public static final String COLUMN = "logH";

    @Override
    public String column() {
      return COLUMN;
    }

    @Override
    public LogExposure at(double place) {
      return LogExposure.ofLog10LuxSeconds(place);
    }
  }

  /**
   * Places are the steps of a tablet, the first one 1.
   *
   * @param clear log exposure where nothing of the tablet is in the way
   * @param densities of its steps in their order, as read on this very tablet
   */
  record TabletSteps(LogExposure clear, List<OpticalDensity> densities) implements StepScale {
    /** Name of its column. */
    public static final String COLUMN = "step";

    public TabletSteps {
      densities = List.copyOf(densities);
      if (densities.isEmpty()) {
        throw new BadValueException(
            "densities of the tablet", "none", "give the density of every step, in their order");
      }
    }

    @Override
    public String column() {
      return COLUMN;
    }

    @Override
    public LogExposure at(double place) {
      if (place != Math.rint(place) || place < 1 || place > densities.size()) {
        throw new BadValueException(
            "step",
            plain(place),
            "the tablet has steps 1 to "
                + densities.size()
                + ": say the densities of all its steps");
      }
      return clear.behind(densities.get((int) place - 1));
    }

    private static String plain(double place) {
      return place == Math.rint(place) && Math.abs(place) < 1e15
          ? String.valueOf((long) place)
          : String.valueOf(place);
    }
  }

  /**
   * Places are stops more (above 0) or less than metered.
   *
   * @param metered index the meter was set to
   */
  record CameraStops(ExposureIndex metered) implements StepScale {
    /** Name of its column. */
    public static final String COLUMN = "stops";

    @Override
    public String column() {
      return COLUMN;
    }

    @Override
    public LogExposure at(double place) {
      return ExposureSeries.inCamera(metered, List.of(Stops.of(place))).get(0);
    }
  }
}
