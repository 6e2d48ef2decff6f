package org.wetside.app.density;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.wetside.app.CannotDoException;
import org.wetside.app.home.Home;
import org.wetside.app.picture.TiffPicture;
import org.wetside.core.instrument.PatchRectangle;
import org.wetside.core.quantity.BadValueException;
import org.wetside.store.Database;
import org.wetside.store.PictureNotes;

/** The pictures kept in the home to be measured, also those put into its folder by hand. */
public final class KeepPictures {
  private final PictureFolder folder;
  private final Supplier<Database> database;

  KeepPictures(Home home, Supplier<Database> database) {
    folder = new PictureFolder(home);
    this.database = database;
  }

  /** All of them by name; one that cannot be measured says why. */
  public List<StoredPicture> all() {
    return folder.names().stream().flatMap(name -> find(name).stream()).toList();
  }

  /** One of them. */
  public Optional<StoredPicture> find(String name) {
    return folder.find(name).map(file -> stored(name, file));
  }

  /** Its file, for whoever draws it. */
  public Optional<Path> file(String name) {
    return folder.find(name);
  }

  private StoredPicture stored(String name, Path file) {
    Optional<PictureNotes.Note> note =
        database
            .get()
            .read(session -> new PictureNotes(session).find(name, PictureFolder.mark(file)));
    boolean declared = note.filter(PictureNotes.Note::declaredLinear).isPresent();
    List<PatchRectangle> patches =
        note.filter(one -> !one.patches().isEmpty())
            .map(one -> PatchLines.parse(one.patches()))
            .orElse(List.of());
    try (TiffPicture picture = TiffPicture.open(file)) {
      return new StoredPicture(name, Optional.of(picture.facts()), "", declared, patches);
    } catch (BadValueException | CannotDoException refused) {
      return new StoredPicture(
          name, Optional.empty(), String.valueOf(refused.getMessage()), declared, patches);
    }
  }

  /**
   * Takes a picture into the home; one that cannot be measured is not kept.
   *
   * @param name of the file as it was sent
   * @param content read to its end
   * @throws BadValueException when the name is taken or none, or it cannot be measured
   */
  public StoredPicture take(String name, InputStream content) {
    Path target = folder.free(name);
    String bare = String.valueOf(target.getFileName());
    try {
      Path fresh = Files.createTempFile(target.getParent(), ".new", ".part");
      try {
        Files.copy(content, fresh, StandardCopyOption.REPLACE_EXISTING);
        TiffPicture.open(fresh, bare).close();
        Files.move(fresh, target);
      } finally {
        Files.deleteIfExists(fresh);
      }
    } catch (IOException failure) {
      throw new CannotDoException("keeping the picture " + bare + ": " + failure, failure);
    }
    return stored(bare, target);
  }

  /**
   * Says whether a picture is linear, where its file does not.
   *
   * @throws BadValueException when there is no such picture
   */
  public void declare(String name, boolean linear) {
    Path file = require(name);
    database
        .get()
        .change(
            session -> {
              PictureNotes notes = new PictureNotes(session);
              String mark = PictureFolder.mark(file);
              String patches = notes.find(name, mark).map(PictureNotes.Note::patches).orElse("");
              notes.put(name, mark, new PictureNotes.Note(linear, patches));
            });
  }

  /** Takes a picture out of the home; false when there is none of that name. */
  public boolean remove(String name) {
    Optional<Path> file = folder.find(name);
    if (file.isEmpty()) {
      return false;
    }
    try {
      Files.delete(file.get());
    } catch (IOException failure) {
      throw new UncheckedIOException("taking " + name + " away: " + failure, failure);
    }
    database.get().change(session -> new PictureNotes(session).remove(name));
    return true;
  }

  private Path require(String name) {
    return folder
        .find(name)
        .orElseThrow(
            () -> new BadValueException("picture", name, "there is none of that name in the home"));
  }
}
