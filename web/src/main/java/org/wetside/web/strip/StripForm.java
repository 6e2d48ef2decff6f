package org.wetside.web.strip;

import io.javalin.http.Context;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.wetside.app.curves.StripDraft;
import org.wetside.app.curves.StripReader;
import org.wetside.app.density.Densitometry;
import org.wetside.core.quantity.Units;
import org.wetside.core.strip.FilmStrip;
import org.wetside.web.page.FilledForm;

/** The form of a strip: a file that was chosen stands in the field of readings from then on. */
final class StripForm {
  private FilledForm form;
  private final Optional<FilmStrip> strip;

  private StripForm(FilledForm typed, Units units, Densitometry densitometry) {
    StripReader reader = new StripReader(units, densitometry);
    strip = reader.read(draft(typed));
    form = typed;
    reader.problems().forEach((field, message) -> form = form.saying(field, message));
  }

  static StripForm of(Context ctx, Densitometry densitometry) {
    FilledForm typed = FilledForm.of(ctx);
    UploadedFile file = ctx.uploadedFile("file");
    if (file != null && file.size() > 0) {
      Map<String, String> values = new LinkedHashMap<>(typed.values());
      values.put("readings", text(file));
      typed = FilledForm.of(values);
    }
    return new StripForm(typed, org.wetside.web.page.Pages.units(ctx), densitometry);
  }

  private static String text(UploadedFile file) {
    try (InputStream content = file.content()) {
      return new String(content.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException("the file sent", unreadable);
    }
  }

  private static StripDraft draft(FilledForm form) {
    return new StripDraft(
        form.value("film"),
        form.value("developer"),
        form.value("dilution"),
        form.value("minutes"),
        form.value("temp"),
        form.value("vessel"),
        form.value("day"),
        form.value("light"),
        form.isBlank("columns") ? "logH" : form.value("columns"),
        form.value("readings"),
        form.value("clear"),
        form.value("tablet"),
        form.value("index"),
        form.value("baseFog"),
        form.value("note"),
        form.value("keptTablet"),
        form.value("instrument"),
        form.value("calibratedOn"));
  }

  /** As it was typed, with every complaint. */
  FilledForm shown() {
    return form;
  }

  /** The strip; empty when it was refused. */
  Optional<FilmStrip> strip() {
    return strip;
  }
}
