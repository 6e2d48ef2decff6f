package org.wetside.web.formula;

import org.wetside.core.source.Citation;
import org.wetside.core.source.Source;
import org.wetside.reference.Bibliography;

/**
 * Where something is read.
 *
 * @param id in the list of sources, with the place in it
 * @param title as printed; empty for what the user typed
 */
public record SourceView(String id, String title) {
  static SourceView of(Citation citation, Bibliography sources) {
    return new SourceView(
        citation.toString(), sources.find(citation.sourceId()).map(Source::title).orElse(""));
  }
}
