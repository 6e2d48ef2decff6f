package org.wetside.web.equipment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.wetside.app.Wetside;
import org.wetside.core.development.FilmFormat;
import org.wetside.core.development.Vessel;
import org.wetside.core.plan.ClosingItem;
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
 * @param checks what is looked at when it is closed; null leaves it, none means the usual list
 */
public record TankView(
    @Nullable String name,
    @Nullable String vessel,
    @Nullable List<RoomView> rooms,
    @Nullable Double holdsMl,
    @Nullable List<ClosingView> checks) {
  /**
   * What a tank takes of one format.
   *
   * @param format 135, 120 or sheet
   * @param most reels or sheets at once
   * @param eachMl liquid that covers one
   */
  public record RoomView(String format, int most, double eachMl) {}

  /**
   * One thing to look at when the tank is closed.
   *
   * @param id stands in the record of a run; not needed when it is written down
   * @param text what is asked
   * @param always whether it is asked even after ten clean runs
   */
  public record ClosingView(@Nullable String id, String text, boolean always) {}

  /** The view of a tank of this home. */
  public static TankView of(Wetside wetside, Tank tank) {
    List<ClosingItem> items = wetside.keepTankChecks().of(tank.name());
    return new TankView(
        tank.name(),
        tank.vessel().word(),
        tank.rooms().stream()
            .map(room -> new RoomView(room.format().word(), room.most(), room.each().millilitres()))
            .toList(),
        tank.holds().millilitres(),
        items.stream()
            .map(item -> new ClosingView(item.id(), item.text(), item.always()))
            .toList());
  }

  /** The same under a name of old, where none was said. */
  TankView named(String old) {
    return new TankView(
        name == null || name.isBlank() ? old : name, vessel, rooms, holdsMl, checks);
  }

  /**
   * The tank it makes of one that is there: only its checks may be said alone.
   *
   * @throws BadValueException naming the part and its limit
   */
  public Tank over(Tank was) {
    boolean onlyChecks = checks != null && vessel == null && rooms == null && holdsMl == null;
    return onlyChecks ? was : tank();
  }

  /** Keeps the tank, and its checks where they were said. */
  public void keep(Wetside wetside, Tank tank) {
    Optional<List<ClosingItem>> said = Optional.ofNullable(checks).map(TankView::items);
    wetside.keepTanks().put(tank);
    said.ifPresent(items -> wetside.keepTankChecks().put(tank.name(), items));
  }

  private static List<ClosingItem> items(List<ClosingView> checks) {
    return ClosingItem.parse(
        checks.stream()
            .map(check -> (check.always() ? "* " : "") + check.text().replaceAll("\\s+", " "))
            .collect(Collectors.joining("\n")));
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
