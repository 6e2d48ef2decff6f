package org.wetside.core.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.wetside.core.development.FilmFormat;
import org.wetside.core.development.Vessel;
import org.wetside.core.quantity.BadValueException;
import org.wetside.core.quantity.Volume;

/**
 * A daylight tank, drum or tray.
 *
 * @param name unique among the user's tanks, 1 to 40 characters
 * @param vessel what it is, as far as a time depends on it
 * @param rooms what it takes, one for each format
 * @param holds the most liquid it takes
 */
public record Tank(String name, Vessel vessel, List<Room> rooms, Volume holds) {
  /**
   * What a tank takes of one format.
   *
   * @param format format
   * @param most reels (or sheets) of it when nothing else is in the tank, at least 1
   * @param each liquid that covers one of them
   */
  public record Room(FilmFormat format, int most, Volume each) {
    public Room {
      if (most < 1 || most > 100) {
        throw new BadValueException("reels of a tank", String.valueOf(most), "1 to 100");
      }
      if (each.millilitres() <= 0) {
        throw new BadValueException("volume for one reel", each.toString(), "above 0 mL");
      }
    }
  }

  public Tank {
    name = name.strip();
    if (name.isEmpty() || name.length() > 40) {
      throw new BadValueException("name of the tank", name, "1 to 40 characters");
    }
    rooms = List.copyOf(rooms);
    if (rooms.isEmpty()) {
      throw new BadValueException("tank", name, "say how many reels it takes");
    }
    for (Room room : rooms) {
      if (room.each().compareTo(holds) > 0) {
        throw new BadValueException(
            "volume for one " + room.format().word() + " reel",
            room.each().toString(),
            "the tank holds " + holds);
      }
    }
  }

  /**
   * What it is like, in one line that changes when the tank does, for example {@code small, holds
   * 650 mL, 135: 2 of 300 mL}.
   */
  public String described() {
    return vessel.word()
        + ", holds "
        + holds
        + rooms.stream()
            .sorted(Comparator.comparing(Room::format))
            .map(room -> ", " + room.format().word() + ": " + room.most() + " of " + room.each())
            .collect(Collectors.joining());
  }

  /** The room for a format; empty when the tank takes none of it. */
  public Optional<Room> room(FilmFormat format) {
    return rooms.stream().filter(room -> room.format().covers(format)).findFirst();
  }

  /**
   * Whether so many reels fit together; reels of two formats share the height of the tank.
   *
   * @param reels how many of each format
   */
  public boolean fits(Map<FilmFormat, Integer> reels) {
    double used = 0;
    for (Map.Entry<FilmFormat, Integer> entry : reels.entrySet()) {
      Optional<Room> room = room(entry.getKey());
      if (room.isEmpty()) {
        return false;
      }
      used += (double) entry.getValue() / room.get().most();
    }
    return used <= 1 + 1e-9;
  }

  /** The liquid that covers so many reels; never more than the tank holds. */
  public Volume covers(Map<FilmFormat, Integer> reels) {
    Volume sum = Volume.ZERO;
    for (Map.Entry<FilmFormat, Integer> entry : reels.entrySet()) {
      Volume each = room(entry.getKey()).map(Room::each).orElse(Volume.ZERO);
      sum = sum.plus(each.times(entry.getValue()));
    }
    return sum.compareTo(holds) > 0 ? holds : sum;
  }
}
