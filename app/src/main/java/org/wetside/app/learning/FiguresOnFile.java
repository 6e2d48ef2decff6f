package org.wetside.app.learning;

import org.wetside.core.learning.LearningRules;
import org.wetside.reference.LearningFigures;

/** The figures on file, read at the first use and kept for the life of the program. */
final class FiguresOnFile {
  static final LearningRules RULES = LearningFigures.read();

  private FiguresOnFile() {}
}
