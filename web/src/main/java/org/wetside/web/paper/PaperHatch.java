package org.wetside.web.paper;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Map;

/**
 * The hatch of a bath, in black, as the pages draw it (docs/look.md).
 *
 * @param width of one tile, in its own units
 * @param height of one tile
 * @param dot diameter of dots; 0 for a drawing of lines
 * @param marks lines; a dot where both ends are one
 */
record PaperHatch(double width, double height, double dot, List<Mark> marks) {
  /** Points of paper for one unit of a tile. */
  private static final double UNIT = 0.7;

  private static final float LINE = 1.5f;
  private static final PaperHatch BLANK = new PaperHatch(100, 100, 0, List.of());

  private static final Map<String, PaperHatch> BY_NAME =
      Map.ofEntries(
          Map.entry("presoak", lines(18, 12, at(0, 3, 9, 3), at(9, 9, 18, 9))),
          Map.entry("developer", lines(9, 9, at(0, 9, 9, 0))),
          Map.entry("stop", lines(9, 9, at(4.5, 0, 4.5, 9))),
          Map.entry("fixer", lines(12, 12, at(0, 12, 12, 0), at(0, 0, 12, 12))),
          Map.entry("rinse", lines(18, 9, at(0, 4.5, 10, 4.5))),
          Map.entry("washaid", dots(12, 12, 4, at(3, 3, 3, 3), at(9, 9, 9, 9))),
          Map.entry("wash", lines(12, 8, at(0, 4, 12, 4))),
          Map.entry("final", dots(16, 16, 3, at(4, 4, 4, 4), at(12, 12, 12, 12))),
          Map.entry(
              "bleach",
              lines(20, 16, at(0, 0, 20, 0), at(0, 8, 20, 8), at(5, 0, 5, 8), at(15, 8, 15, 16))),
          Map.entry(
              "bleachfix",
              lines(
                  20,
                  16,
                  at(0, 0, 20, 0),
                  at(0, 8, 20, 8),
                  at(5, 0, 5, 8),
                  at(15, 8, 15, 16),
                  at(5, 8, 15, 16),
                  at(15, 8, 5, 16))),
          Map.entry(
              "reversal",
              lines(18, 12, at(0, 3, 9, 3), at(9, 9, 18, 9), at(2, 12, 8, 6), at(11, 3, 14, 0))),
          Map.entry("conditioner", dots(14, 12, 4, at(0, 4, 14, 4), at(4, 9, 4, 9))),
          Map.entry("stabiliser", dots(16, 14, 3, at(12, 0, 12, 14), at(4, 7, 4, 7))),
          Map.entry("hardener", lines(12, 12, at(3, 0, 3, 12), at(3, 6, 12, 6))));

  /** A stroke in the units of its tile. */
  record Mark(double fromX, double fromY, double toX, double toY) {}

  /** The hatch of that name; none for a name that has none. */
  static PaperHatch named(String name) {
    return BY_NAME.getOrDefault(name, BLANK);
  }

  /** Fills a shape, whose units are points, and draws its edge. */
  void fill(Graphics2D on, Shape shape) {
    Graphics2D within = (Graphics2D) on.create();
    within.setColor(Color.BLACK);
    within.clip(shape);
    within.setStroke(new BasicStroke((float) (LINE * UNIT)));
    Rectangle2D around = shape.getBounds2D();
    double wide = width * UNIT;
    double tall = height * UNIT;
    double left = Math.floor(around.getMinX() / wide) * wide;
    double top = Math.floor(around.getMinY() / tall) * tall;
    for (double y = top; y < around.getMaxY(); y += tall) {
      for (double x = left; x < around.getMaxX(); x += wide) {
        tile(within, x, y);
      }
    }
    within.dispose();
    on.setStroke(new BasicStroke(0.9f));
    on.draw(shape);
  }

  private void tile(Graphics2D on, double x, double y) {
    for (Mark mark : marks) {
      double fromX = x + mark.fromX() * UNIT;
      double fromY = y + mark.fromY() * UNIT;
      if (mark.fromX() == mark.toX() && mark.fromY() == mark.toY()) {
        double size = dot * UNIT;
        on.fill(new Ellipse2D.Double(fromX - size / 2, fromY - size / 2, size, size));
      } else {
        on.draw(new Line2D.Double(fromX, fromY, x + mark.toX() * UNIT, y + mark.toY() * UNIT));
      }
    }
  }

  private static PaperHatch lines(double width, double height, Mark... marks) {
    return new PaperHatch(width, height, 0, List.of(marks));
  }

  private static PaperHatch dots(double width, double height, double dot, Mark... marks) {
    return new PaperHatch(width, height, dot, List.of(marks));
  }

  private static Mark at(double fromX, double fromY, double toX, double toY) {
    return new Mark(fromX, fromY, toX, toY);
  }
}
