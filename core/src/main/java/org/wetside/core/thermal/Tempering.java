package org.wetside.core.thermal;

import java.util.List;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Volume;

/** What to pour to get a volume at a temperature: {@link Reached} or {@link CannotBeReached}. */
public sealed interface Tempering permits Tempering.Reached, Tempering.CannotBeReached {
  /**
   * Water is poured cold first; above this the mixture scalds and softens thin plastic measures
   * (hazards row "hot water above 50 C", common practice).
   */
  Temperature SCALDS_ABOVE = Temperature.ofCelsius(50);

  /** The temperature that the waters to add must have together. */
  Temperature waterTemperature();

  /** Whether a water at hand above {@link #SCALDS_ABOVE} is to be handled. */
  boolean scalds();

  /**
   * The waters at hand reach the target.
   *
   * @param pour volumes of each water, coldest first; nothing of a water that is not needed
   * @param waterTemperature what they have together, before what is counted in
   * @param total the volume asked for, at the target
   */
  record Reached(List<Liquid> pour, Temperature waterTemperature, Volume total)
      implements Tempering {
    public Reached {
      pour = List.copyOf(pour);
    }

    /** How much of the water of that name to pour; zero when it is not needed. */
    public Volume of(String name) {
      return pour.stream()
          .filter(part -> part.name().equals(name))
          .map(Liquid::volume)
          .reduce(Volume.ZERO, Volume::plus);
    }

    @Override
    public boolean scalds() {
      return pour.stream().anyMatch(part -> part.temperature().compareTo(SCALDS_ABOVE) > 0);
    }
  }

  /**
   * No mixture of the waters at hand gives the target.
   *
   * @param waterTemperature what the water would have to have
   * @param nearest the temperature of the whole that comes nearest
   * @param nearestPour what to pour for it
   */
  record CannotBeReached(
      Temperature waterTemperature, Temperature nearest, List<Liquid> nearestPour)
      implements Tempering {
    public CannotBeReached {
      nearestPour = List.copyOf(nearestPour);
    }

    @Override
    public boolean scalds() {
      return nearestPour.stream().anyMatch(part -> part.temperature().compareTo(SCALDS_ABOVE) > 0);
    }
  }
}
