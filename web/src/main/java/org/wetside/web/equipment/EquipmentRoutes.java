package org.wetside.web.equipment;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wetside.app.Wetside;
import org.wetside.core.development.FilmFormat;
import org.wetside.core.development.Vessel;
import org.wetside.core.plan.Tank;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Temperature;
import org.wetside.core.quantity.Units;
import org.wetside.core.quantity.Volume;
import org.wetside.core.thermal.Thermometer;
import org.wetside.core.thermal.ThermometerOffset;
import org.wetside.web.Routes;
import org.wetside.web.page.FieldReader;
import org.wetside.web.page.FilledForm;
import org.wetside.web.page.Pages;
import org.wetside.web.page.Place;
import org.wetside.web.rolls.Days;

/** The Equipment page. */
public final class EquipmentRoutes implements Routes {
  private static final String TEMPLATE = "equipment.jte";

  private final Wetside wetside;
  private final Pages pages;

  /**
   * @param wetside the open home
   * @param pages draws the page
   */
  public EquipmentRoutes(Wetside wetside, Pages pages) {
    this.wetside = wetside;
    this.pages = pages;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.get(
        "/equipment",
        ctx -> pages.show(ctx, TEMPLATE, page(ctx, FilledForm.empty(), FilledForm.empty())));
    routes.post("/equipment/tank", this::keepTank);
    routes.post("/equipment/tank/remove", this::removeTank);
    routes.post("/equipment/thermometer", this::keepThermometer);
  }

  private void keepTank(Context ctx) {
    FieldReader read = new FieldReader(FilledForm.of(ctx), Pages.units(ctx));
    Optional<Vessel> vessel = read.required("vessel", "tank", Vessel::parse);
    Optional<Volume> holds = read.requiredVolume("holds", "volume of the tank");
    List<Tank.Room> rooms = new ArrayList<>();
    room(read, rooms, FilmFormat.SMALL, "135");
    room(read, rooms, FilmFormat.MEDIUM, "120");
    if (read.isGood()) {
      try {
        Tank tank =
            new Tank(read.form().value("name"), vessel.orElseThrow(), rooms, holds.orElseThrow());
        wetside.keepTanks().put(tank);
        pages.goSaying(ctx, "/equipment", "Kept " + tank.name() + ".");
        return;
      } catch (BadValueException refusal) {
        read.refuse(refusal.thing().startsWith("name") ? "name" : FilledForm.WHOLE, refusal);
      }
    }
    pages.showRefused(ctx, TEMPLATE, page(ctx, read.form(), FilledForm.empty()));
  }

  private static void room(
      FieldReader read, List<Tank.Room> rooms, FilmFormat format, String suffix) {
    Optional<Integer> most = read.maybe("most-" + suffix, FieldReader::count);
    if (most.isEmpty()) {
      return;
    }
    Optional<Volume> each = read.requiredVolume("each-" + suffix, "volume for one reel");
    if (each.isPresent()) {
      try {
        rooms.add(new Tank.Room(format, most.get(), each.get()));
      } catch (BadValueException refusal) {
        read.refuse("most-" + suffix, refusal);
      }
    }
  }

  private void removeTank(Context ctx) {
    String name = String.valueOf(ctx.formParam("name"));
    boolean removed = wetside.keepTanks().remove(name);
    pages.goSaying(
        ctx, "/equipment", removed ? "Took " + name + " away." : "There is no tank " + name + ".");
  }

  private void keepThermometer(Context ctx) {
    FieldReader read = new FieldReader(FilledForm.of(ctx), Pages.units(ctx));
    Optional<Temperature> shown = read.maybeTemperature("shown");
    Optional<Temperature> truth = read.maybeTemperature("truth");
    if (shown.isPresent() != truth.isPresent() && read.isGood()) {
      read.refuse(
          shown.isPresent() ? "truth" : "shown",
          new BadValueException(
              "comparison", "half of it", "say what it showed and what was true"));
    }
    if (read.isGood()) {
      try {
        String name = read.form().value("name");
        if (wetside.keepThermometers().find(name).isEmpty()) {
          wetside.keepThermometers().add(name);
        }
        if (shown.isPresent()) {
          wetside
              .keepThermometers()
              .compared(
                  name,
                  ThermometerOffset.fromComparison(
                      shown.get(),
                      truth.orElseThrow(),
                      ComparisonBody.USUAL_DOUBT,
                      today(),
                      read.form().value("how")));
        }
        pages.goSaying(ctx, "/equipment", "Kept " + name + ".");
        return;
      } catch (BadValueException refusal) {
        read.refuse(refusal.thing().startsWith("name") ? "name" : "shown", refusal);
      }
    }
    pages.showRefused(ctx, TEMPLATE, page(ctx, FilledForm.empty(), read.form()));
  }

  private EquipmentPage page(Context ctx, FilledForm tank, FilledForm thermometer) {
    return new EquipmentPage(
        pages.sheet(ctx, Place.EQUIPMENT, "Equipment"),
        wetside.keepTanks().all().stream().map(one -> line(one, Pages.units(ctx))).toList(),
        wetside.keepThermometers().all().stream().map(one -> line(one, Pages.units(ctx))).toList(),
        tank,
        thermometer);
  }

  private static EquipmentPage.TankLine line(Tank tank, Units units) {
    return new EquipmentPage.TankLine(
        tank.name(),
        tank.vessel().label(),
        tank.rooms().stream()
            .sorted(Comparator.comparing(Tank.Room::format))
            .map(
                room ->
                    room.most()
                        + " × "
                        + room.format().word()
                        + ", "
                        + units.words(room.each())
                        + " each")
            .collect(Collectors.joining("; ")),
        units.words(tank.holds()));
  }

  private EquipmentPage.ThermometerLine line(Thermometer thermometer, Units units) {
    return new EquipmentPage.ThermometerLine(
        thermometer.name(),
        thermometer.offset().isPresent(),
        thermometer.offset().map(EquipmentRoutes::offset).orElse("not compared yet"),
        thermometer
            .offset()
            .map(
                known ->
                    "at "
                        + units.words(known.at())
                        + " on "
                        + Days.of(wetside.clock()).day(known.found())
                        + (known.how().isBlank() ? "" : ", " + known.how()))
            .orElse("trusted to ±0.5 K until it is"));
  }

  /** With a true minus, in kelvins or degrees Celsius, which differ alike. */
  private static String offset(ThermometerOffset known) {
    double kelvins = known.correction().kelvins();
    return String.format(Locale.ROOT, "%s%.1f K", kelvins < 0 ? "−" : "+", Math.abs(kelvins));
  }

  private LocalDate today() {
    return LocalDate.ofInstant(wetside.clock().instant(), wetside.clock().getZone());
  }
}
