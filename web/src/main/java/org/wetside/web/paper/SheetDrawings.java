package org.wetside.web.paper;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.w3c.dom.Element;

/** What is drawn on the run sheet: the code, the strip, the tank and the hatches of the baths. */
final class SheetDrawings extends PaperDrawings {
  /** Media type of the elements it draws; {@code data-what} says which. */
  static final String TYPE = "wetside/drawing";

  private static final double POINTS_PER_MM = 72 / 25.4;
  private static final double TAPE_TOP_MM = 2.2;
  private static final double TAPE_BASE_MM = 8.4;
  private static final double TAPE_TICK_MM = 9.4;
  private static final double LID_MM = 4;

  private final SheetView sheet;
  private final Tape tape;

  SheetDrawings(SheetView sheet, Tape tape) {
    this.sheet = sheet;
    this.tape = tape;
  }

  @Override
  void draw(Element element, Graphics2D on, double width, double height) {
    String what = element.getAttribute("data-what");
    switch (what) {
      case "code" -> code(on, sheet.address(), width);
      case "tape" -> tape(on);
      case "tank" -> tank(on, width, height);
      default -> super.draw(element, on, width, height);
    }
  }

  private void tape(Graphics2D on) {
    for (Tape.Shape bath : tape.shapes()) {
      Path2D shape = new Path2D.Double();
      double top = bath.wet() ? TAPE_TOP_MM : TAPE_BASE_MM - 1;
      shape.moveTo(mm(bath.begin()), mm(TAPE_BASE_MM));
      shape.lineTo(mm(bath.full()), mm(top));
      shape.lineTo(mm(bath.drain()), mm(top));
      shape.lineTo(mm(bath.end()), mm(TAPE_BASE_MM));
      shape.closePath();
      PaperHatch.named(bath.hatch()).fill(on, shape);
    }
    on.setStroke(new BasicStroke(0.9f));
    line(on, 0, TAPE_BASE_MM, Tape.WIDTH_MM, TAPE_BASE_MM);
    tape.clock().forEach(time -> line(on, time.atMm(), TAPE_BASE_MM, time.atMm(), TAPE_TICK_MM));
    on.fill(new Rectangle2D.Double(0, 0, mm(tape.lidOffMm()), mm(1)));
  }

  /** From the side: lid, wall, core, and one reel for each roll. */
  private void tank(Graphics2D on, double width, double height) {
    double lid = mm(LID_MM);
    on.setStroke(new BasicStroke(1.2f));
    on.draw(new Rectangle2D.Double(width * 0.22, 0.6, width * 0.56, lid * 0.4));
    on.draw(new Rectangle2D.Double(0.6, lid * 0.4 + 0.6, width - 1.2, lid * 0.45));
    on.draw(
        new Rectangle2D.Double(mm(1), lid * 0.85 + 0.6, width - mm(2), height - lid * 0.85 - 1.2));
    int reels = sheet.rolls().size();
    double room = (height - lid - mm(1)) / reels;
    for (int i = 0; i < reels; i++) {
      double top = lid + i * room + mm(1.2);
      double bottom = lid + (i + 1) * room - mm(0.6);
      reel(on, width, top, bottom);
    }
    on.setStroke(new BasicStroke(1.2f));
    on.draw(new Rectangle2D.Double(width / 2 - mm(0.6), lid, mm(1.2), height - lid - 1));
  }

  private static void reel(Graphics2D on, double width, double top, double bottom) {
    double left = mm(2.4);
    on.setStroke(new BasicStroke(2.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
    on.draw(new Line2D.Double(left, top, width - left, top));
    on.draw(new Line2D.Double(left, bottom, width - left, bottom));
    on.setStroke(new BasicStroke(0.8f));
    for (int turn = 1; turn <= 3; turn++) {
      double off = mm(1.2) * turn;
      on.draw(new Line2D.Double(left + off, top + 2, left + off, bottom - 2));
      on.draw(new Line2D.Double(width - left - off, top + 2, width - left - off, bottom - 2));
    }
  }

  private static void line(Graphics2D on, double x1, double y1, double x2, double y2) {
    on.draw(new Line2D.Double(mm(x1), mm(y1), mm(x2), mm(y2)));
  }

  private static double mm(double millimetres) {
    return millimetres * POINTS_PER_MM;
  }
}
