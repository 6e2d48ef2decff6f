package org.wetside.app.learning;

import java.util.List;
import org.wetside.core.learning.FilmInDeveloper;
import org.wetside.core.learning.Lesson;
import org.wetside.core.learning.Lessons;
import org.wetside.core.quantity.BadValueException;
import org.wetside.store.Judgements;
import org.wetside.store.Session;

/** The lesson that somebody names by film, its name or code, and developer, in any case. */
final class LessonNamed {
  private LessonNamed() {}

  /**
   * That lesson.
   *
   * @throws BadValueException naming those there are
   */
  static Lesson require(Session session, String film, String developer) {
    List<Lesson> lessons = lessons(session);
    return lessons.stream()
        .filter(lesson -> isOf(lesson, film, developer))
        .findFirst()
        .orElseThrow(
            () ->
                new BadValueException(
                    "film in developer",
                    film + " in " + developer,
                    lessons.isEmpty()
                        ? "no roll was judged yet"
                        : "rolls were judged of "
                            + String.join(
                                ", ",
                                lessons.stream()
                                    .map(one -> one.film() + " in " + one.of().developer())
                                    .toList())));
  }

  /** Its film and developer; as they were named where no roll of them is judged any more. */
  static FilmInDeveloper pair(Session session, String film, String developer) {
    return lessons(session).stream()
        .filter(lesson -> isOf(lesson, film, developer))
        .map(Lesson::of)
        .findFirst()
        .orElseGet(() -> new FilmInDeveloper(film.strip(), developer.strip()));
  }

  private static List<Lesson> lessons(Session session) {
    return Lessons.from(new Judgements(session).all(), FiguresOnFile.RULES).lessons();
  }

  private static boolean isOf(Lesson lesson, String film, String developer) {
    boolean sameFilm =
        lesson.film().equalsIgnoreCase(film.strip())
            || lesson.of().filmCode().equalsIgnoreCase(film.strip());
    return sameFilm && lesson.of().developer().equalsIgnoreCase(developer.strip());
  }
}
