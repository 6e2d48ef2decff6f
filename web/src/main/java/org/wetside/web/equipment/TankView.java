package org.wetside.web.equipment;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.wetside.core.development.FilmFormat;
import org.wetside.core.development.Vessel;
import org.wetside.core.plan.Tank;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;

/**
 * A tank over HTTP.
 *
 * @param name unique name
 * @param vessel small, large, rotary or tray; null for small
 * @param rooms what it takes of each format
 * @param holdsMl the most liquid it takes
 */
public record TankView(
    @Nullable String name,
    @Nullable String vessel,
    @Nullable List<RoomView> rooms,
    @Nullable Double holdsMl) {
  /**
   * What a tank takes of one format.
   *
   * @param format 135, 120 or sheet
   * @param most reels or sheets at once
   * @param eachMl liquid that covers one
   */
  public record RoomView(String format, int most, double eachMl) {}

  /** The view of a tank. */
  public static TankView of(Tank tank) {
    return new TankView(
        tank.name(),
        tank.vessel().word(),
        tank.rooms().stream()
            .map(room -> new RoomView(room.format().word(), room.most(), room.each().millilitres()))
            .toList(),
        tank.holds().millilitres());
  }

  /** The same under a name of old, where none was said. */
  TankView named(String old) {
    return new TankView(name == null || name.isBlank() ? old : name, vessel, rooms, holdsMl);
  }

  /**
   * The tank it means.
   *
   * @throws BadValueException naming the part and its limit
   */
  public Tank tank() {
    List<Tank.Room> takes = new ArrayList<>();
    for (RoomView room : rooms == null ? List.<RoomView>of() : rooms) {
      takes.add(
          new Tank.Room(
              FilmFormat.parse(room.format()), room.most(), Volume.ofMillilitres(room.eachMl())));
    }
    if (holdsMl == null) {
      throw new BadValueException("volume of the tank", "", "say how much it holds, in mL");
    }
    return new Tank(
        name == null ? "" : name,
        vessel == null || vessel.isBlank() ? Vessel.SMALL_TANK : Vessel.parse(vessel),
        takes,
        Volume.ofMillilitres(holdsMl));
  }
}
