package org.wetside.web.paper;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;
import org.wetside.web.pairing.QrDrawing;

/**
 * What any paper may draw: {@code <object type="wetside/paper" data-what="code"
 * data-address="http://…">} is a code that leads there, any other {@code data-what} the hatch of a
 * bath.
 */
class PaperDrawings implements FSObjectDrawer {
  /** Media type of the elements it draws. */
  static final String TYPE = "wetside/paper";

  private static final double PIXELS_PER_POINT = 96 / 72.0;

  @Override
  public @Nullable Map<Shape, String> drawObject(
      Element element,
      double x,
      double y,
      double width,
      double height,
      OutputDevice device,
      RenderingContext context,
      int dotsPerPixel) {
    double wide = width / dotsPerPixel;
    double tall = height / dotsPerPixel;
    device.drawWithGraphics(
        (float) x,
        (float) y,
        (float) wide,
        (float) tall,
        on -> {
          on.scale(PIXELS_PER_POINT, PIXELS_PER_POINT);
          on.setColor(Color.BLACK);
          draw(element, on, wide / PIXELS_PER_POINT, tall / PIXELS_PER_POINT);
        });
    return null;
  }

  /** Draws one element, in points from its upper left corner. */
  void draw(Element element, Graphics2D on, double width, double height) {
    String what = element.getAttribute("data-what");
    if (what.equals("code")) {
      code(on, element.getAttribute("data-address"), width);
    } else {
      PaperHatch.named(what).fill(on, new Rectangle2D.Double(0.5, 0.5, width - 1, height - 1));
    }
  }

  /** One path, so that no hair of white is left between two modules. */
  static void code(Graphics2D on, String address, double width) {
    QrDrawing code = QrDrawing.of(address);
    double module = width / code.size();
    Path2D all = new Path2D.Double();
    for (QrDrawing.Module one : code.dark()) {
      all.append(new Rectangle2D.Double(one.x() * module, one.y() * module, module, module), false);
    }
    on.fill(all);
  }
}
