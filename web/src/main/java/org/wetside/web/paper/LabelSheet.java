package org.wetside.web.paper;

import java.util.List;

/**
 * Model of printed bottle labels.
 *
 * @param faces the labels
 * @param size of a page
 * @param margin around what is printed on it
 * @param style the style sheet
 */
public record LabelSheet(List<LabelFace> faces, String size, String margin, String style) {
  private static final int ACROSS = 2;
  private static final int DOWN = 4;

  /** Keeps an unmodifiable copy. */
  public LabelSheet {
    faces = List.copyOf(faces);
  }

  /** Whether each has a page of its own. */
  public boolean single() {
    return size.startsWith("97");
  }

  /** The labels by page and row. */
  public List<List<List<LabelFace>>> pages() {
    return single()
        ? faces.stream().map(face -> List.of(List.of(face))).toList()
        : parts(parts(faces, ACROSS), DOWN);
  }

  private static <T> List<List<T>> parts(List<T> all, int most) {
    return java.util.stream.IntStream.iterate(0, from -> from < all.size(), from -> from + most)
        .mapToObj(from -> all.subList(from, Math.min(from + most, all.size())))
        .toList();
  }
}
