package org.wetside.app.density;

import java.nio.file.Path;
import java.util.List;
import java.util.function.Supplier;
import org.wetside.app.home.Home;
import org.wetside.app.picture.TiffPicture;
import org.wetside.core.instrument.PatchMeasure;
import org.wetside.core.instrument.PatchRectangle;
import org.wetside.core.quantity.BadValueException;
import org.wetside.store.Database;
import org.wetside.store.PictureNotes;

/** Measures patches of a picture. */
public final class ReadPatches {
  private final PictureFolder folder;
  private final Supplier<Database> database;

  ReadPatches(Home home, Supplier<Database> database) {
    folder = new PictureFolder(home);
    this.database = database;
  }

  /**
   * Of a picture kept in the home; the patches are remembered with it, also when it is refused.
   *
   * @throws BadValueException when there is none of that name, nobody says that it is linear, or a
   *     patch leaves it
   */
  public List<PatchMeasure> of(String name, List<PatchRectangle> patches) {
    Path file =
        folder
            .find(name)
            .orElseThrow(
                () ->
                    new BadValueException(
                        "picture", name, "there is none of that name in the home"));
    boolean declared = remembered(name, PictureFolder.mark(file), PatchLines.checked(patches));
    return ofFile(file, declared, patches);
  }

  private boolean remembered(String name, String mark, List<PatchRectangle> patches) {
    return database
        .get()
        .inTransaction(
            session -> {
              PictureNotes notes = new PictureNotes(session);
              boolean declared =
                  notes.find(name, mark).map(PictureNotes.Note::declaredLinear).orElse(false);
              notes.put(name, mark, new PictureNotes.Note(declared, PatchLines.text(patches)));
              return declared;
            });
  }

  /**
   * Of any file; needs no home.
   *
   * @param declaredLinear whether whoever asks says that it is linear, where it does not itself
   * @throws BadValueException when it cannot be measured, with the reason, or a patch leaves it
   */
  public static List<PatchMeasure> ofFile(
      Path file, boolean declaredLinear, List<PatchRectangle> patches) {
    try (TiffPicture picture = TiffPicture.open(file)) {
      picture.facts().requireLinear(declaredLinear);
      return picture.measure(PatchLines.checked(patches));
    }
  }
}
