package org.wetside.web.testroll;

import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.wetside.core.quantity.Units;
import org.wetside.core.testroll.RollPlan;
import org.wetside.web.paper.PaperPdf;
import org.wetside.web.paper.SheetWish;

/**
 * Model of the sheet that goes through the whole test: to expose by, to cut by, to develop by, with
 * room for every reading.
 *
 * @param view the plan
 * @param head what stands above
 * @param rows the table to expose by
 * @param paper {@code a4} or {@code letter}
 * @param style the style sheet
 */
public record TestRollSheet(
    TestRollView view, TestRollHead head, List<SeriesRow> rows, String paper, String style) {
  /** Width of one frame in the drawing of the roll: 36 of them fit both papers. */
  private static final double FRAME_MM = 5.1;

  private static final double STRIP_MM = 11;
  private static final double LEAST_BAR_MM = 1;
  private static final double BAR_PER_STOP_MM = 1.1;

  /** Frames on the scale in true size: as many as fit both papers. */
  private static final int SCALE_FRAMES = 4;

  /** Keeps an unmodifiable copy. */
  public TestRollSheet {
    rows = List.copyOf(rows);
  }

  /**
   * The sheet as a PDF of two pages.
   *
   * @param paper {@code a4} or {@code letter}; A4 when nothing is said
   */
  public static byte[] pdf(TestRollView view, Units units, @Nullable String paper) {
    return PaperPdf.of(
        "paper/test-roll.jte",
        new TestRollSheet(
            view,
            TestRollHead.of(view, units),
            SeriesRow.of(view),
            new SheetWish(null, paper).format().word(),
            PaperPdf.style("test-roll.css")));
  }

  /** The size of the page. */
  public String size() {
    return paper.equals("letter") ? "8.5in 11in" : "210mm 297mm";
  }

  /** Where a frame of the drawing begins, in mm. */
  public double left(int frame) {
    return (frame - 1) * FRAME_MM;
  }

  /** How high the bar of a frame stands, in mm: more light, more black. */
  public double bar(FrameView frame) {
    Double stops = frame.stops();
    return stops == null ? 0 : LEAST_BAR_MM + (stops - RollPlan.LEAST) * BAR_PER_STOP_MM;
  }

  /** Where that bar begins from above, in mm. */
  public double barTop(FrameView frame) {
    return STRIP_MM - bar(frame);
  }

  /** Places of the cuts in the drawing, in mm. */
  public List<Double> cuts() {
    return view.gauge().fromFirstFrameMm().stream()
        .map(at -> at / view.gauge().pitchMm() * FRAME_MM)
        .toList();
  }

  /** Marks of the scale in true size, in mm. */
  public List<Double> marks() {
    return IntStream.rangeClosed(0, SCALE_FRAMES)
        .mapToObj(frame -> frame * view.gauge().pitchMm())
        .toList();
  }

  /** How long that scale is, in mm. */
  public double scaleMm() {
    return SCALE_FRAMES * view.gauge().pitchMm();
  }

  /** Steps under a heading, in their order. */
  public List<TestRollView.TestStepView> steps(String part) {
    return view.steps().stream().filter(step -> step.part().equals(part)).toList();
  }

  /** Headings in their order. */
  public List<String> parts() {
    return view.steps().stream().map(TestRollView.TestStepView::part).distinct().toList();
  }

  /** Without {@code .0}. */
  public static String plain(double value) {
    String text = String.valueOf(value);
    return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
  }
}
