package org.wetside.app.learning;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.core.development.TimeQuestion;
import org.wetside.core.learning.AcceptedFactor;
import org.wetside.core.learning.AcceptedIndex;
import org.wetside.core.learning.FilmInDeveloper;
import org.wetside.core.learning.Judgement;
import org.wetside.core.learning.Lesson;
import org.wetside.core.learning.Lessons;
import org.wetside.store.Database;
import org.wetside.store.Judgements;
import org.wetside.store.OwnFactors;
import org.wetside.store.OwnIndexes;

/** What all judged rolls say, and what of it is in use. */
public final class SeeLearned {
  private final Supplier<Database> database;

  SeeLearned(Supplier<Database> database) {
    this.database = database;
  }

  /**
   * What was learned, at one moment.
   *
   * @param lessons of every film in a developer, with the control chart
   * @param inUse the factors that were accepted
   * @param indexes the own indexes that were accepted
   */
  public record Now(Lessons lessons, List<AcceptedFactor> inUse, List<AcceptedIndex> indexes) {
    /** Keeps unmodifiable copies. */
    public Now {
      inUse = List.copyOf(inUse);
      indexes = List.copyOf(indexes);
    }

    /** What there is beside the maker's time for a question, in words; empty when nothing. */
    public Optional<String> beside(TimeQuestion question) {
      FilmInDeveloper pair =
          new FilmInDeveloper(question.film().code(), question.developer().name());
      return LearnedWords.beside(lessons.of(pair).flatMap(Lesson::time), accepted(pair));
    }

    /** The accepted factor of a film in a developer. */
    public Optional<AcceptedFactor> accepted(FilmInDeveloper pair) {
      return inUse.stream().filter(one -> one.isOf(pair)).findFirst();
    }

    /** The accepted index of a film in a developer. */
    public Optional<AcceptedIndex> acceptedIndex(FilmInDeveloper pair) {
      return indexes.stream().filter(one -> one.of().equals(pair)).findFirst();
    }

    /** What there is of an own index for a question, in words; empty when nothing. */
    public Optional<String> indexBeside(TimeQuestion question) {
      FilmInDeveloper pair =
          new FilmInDeveloper(question.film().code(), question.developer().name());
      return LearnedWords.indexBeside(lessons.of(pair).flatMap(Lesson::index), acceptedIndex(pair));
    }
  }

  /**
   * The own indexes in use, in words: {@code 283 for 400TX in D-76}, parted by commas.
   *
   * @param filmCode of this coating alone; empty for all
   * @return empty when none is in use
   */
  public String indexesInUse(Optional<String> filmCode) {
    return String.join(
        ", ",
        database.get().read(session -> new OwnIndexes(session).inUse()).stream()
            .filter(one -> filmCode.isEmpty() || filmCode.get().equals(one.of().filmCode()))
            .map(LearnedWords::indexInUse)
            .toList());
  }

  /** As it stands. */
  public Now now() {
    return database
        .get()
        .read(
            session -> {
              List<Judgement> judged = new Judgements(session).all();
              return new Now(
                  judged.isEmpty() ? Lessons.NONE : Lessons.from(judged, FiguresOnFile.RULES),
                  new OwnFactors(session).inUse(),
                  new OwnIndexes(session).inUse());
            });
  }
}
