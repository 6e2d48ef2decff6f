package org.wetside.web.track;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.io.IOException;
import java.io.InputStream;
import java.time.DateTimeException;
import java.time.Instant;
import org.eclipse.jetty.io.EofException;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.wetside.app.Wetside;
import org.wetside.app.sound.CueTrack;
import org.wetside.app.sound.Format;
import org.wetside.app.sound.SoundFile;
import org.wetside.core.quantity.BadValueException;
import org.wetside.web.Routes;
import org.wetside.web.contract.Operation;
import org.wetside.web.contract.Query;
import org.wetside.web.process.CuesQuery;

/** The cue track of a run, {@code /api/runs/{run}/track.…}, and of a plan. */
public final class TrackRoutes implements Routes {
  private static final Logger LOG = LoggerFactory.getLogger(TrackRoutes.class);
  private static final int BLOCK = 1 << 14;

  private final Wetside wetside;
  private final KeptTracks kept = new KeptTracks();

  /**
   * @param wetside whose runs and plans they are
   */
  public TrackRoutes(Wetside wetside) {
    this.wetside = wetside;
  }

  /**
   * Which part of a run.
   *
   * @param from the moment at which the track begins, such as {@code 2026-05-04T19:31:07Z}; now
   *     when nothing is said. Before the run has begun: the moment of the first pour
   * @param tick {@code no} leaves out the tick that says the sound is alive
   */
  public record RunTrackQuery(@Nullable String from, @Nullable String tick) {}

  /**
   * Which plan.
   *
   * @param process short name of a process; null when a load is asked for
   * @param load number of a load; null when a process is asked for
   * @param development time of the first developer, such as {@code 9:00}
   * @param tick {@code no} leaves out the tick that says the sound is alive
   */
  public record PlanTrackQuery(
      @Nullable String process,
      @Nullable String load,
      @Nullable String development,
      @Nullable String tick) {}

  @Override
  public void register(RoutesConfig routes) {
    for (Format format : Format.values()) {
      String ending = "/track." + format.ending();
      routes.addEndpoint(
          Operation.get("/api/runs/{run}" + ending, "What is left of a run as one audio file")
              .query(RunTrackQuery.class)
              .gives(HttpStatus.OK, format.mediaType(), "the whole file")
              .gives(HttpStatus.PARTIAL_CONTENT, format.mediaType(), "the range asked for")
              .handledBy(ctx -> answer(ctx, ofRun(ctx), format)));
      routes.addEndpoint(
          Operation.get("/api/cues" + ending, "A plan as one audio file, from its first cue")
              .query(PlanTrackQuery.class)
              .gives(HttpStatus.OK, format.mediaType(), "the whole file")
              .gives(HttpStatus.PARTIAL_CONTENT, format.mediaType(), "the range asked for")
              .handledBy(ctx -> answer(ctx, ofPlan(ctx), format)));
    }
  }

  private CueTrack ofRun(Context ctx) {
    RunTrackQuery query = Query.read(ctx, RunTrackQuery.class);
    String run = ctx.pathParam("run");
    if (!run.matches("\\d{1,9}")) {
      throw new BadValueException("run", run, "a whole number, for example 7");
    }
    return wetside
        .makeTrack()
        .ofRun(wetside.bench().look(Long.parseLong(run)), from(query.from()), tick(query.tick()));
  }

  private CueTrack ofPlan(Context ctx) {
    PlanTrackQuery query = Query.read(ctx, PlanTrackQuery.class);
    CuesQuery cues = new CuesQuery(query.process(), query.load(), query.development());
    return wetside.makeTrack().ofPlan(cues.answer(wetside.showCues()), tick(query.tick()));
  }

  private Instant from(@Nullable String text) {
    if (text == null || text.isBlank()) {
      return wetside.clock().instant();
    }
    try {
      return Instant.parse(text.strip());
    } catch (DateTimeException unreadable) {
      throw new BadValueException("from", text, "a moment such as 2026-05-04T19:31:07Z");
    }
  }

  private static boolean tick(@Nullable String text) {
    String word = text == null || text.isBlank() ? "yes" : text.strip();
    if (!word.equals("yes") && !word.equals("no")) {
      throw new BadValueException("tick", word, "yes or no");
    }
    return word.equals("yes");
  }

  private void answer(Context ctx, CueTrack track, Format format) throws IOException {
    SoundFile file = kept.file(track, format);
    String mark = "\"" + Integer.toHexString(track.hashCode()) + "-" + file.size() + "\"";
    ctx.header("ETag", mark).header("Cache-Control", "no-cache").header("Accept-Ranges", "bytes");
    ctx.header("Content-Disposition", "inline; filename=\"cue-track." + format.ending() + "\"");
    ctx.contentType(format.mediaType());
    String onlyIf = ctx.header("If-Range");
    String wanted = onlyIf == null || onlyIf.equals(mark) ? ctx.header("Range") : null;
    ByteRange part = ByteRange.read(wanted, file.size()).orElse(null);
    if (part == null) {
      send(ctx, file, ByteRange.all(file.size()));
    } else if (part.isEmpty()) {
      ctx.status(HttpStatus.RANGE_NOT_SATISFIABLE)
          .header("Content-Range", "bytes */" + file.size());
    } else {
      ctx.status(HttpStatus.PARTIAL_CONTENT);
      ctx.header("Content-Range", "bytes " + part.first() + "-" + part.last() + "/" + file.size());
      send(ctx, file, part);
    }
  }

  private static void send(Context ctx, SoundFile file, ByteRange part) throws IOException {
    ctx.res().setContentLengthLong(part.length());
    byte[] block = new byte[BLOCK];
    try (InputStream bytes = file.from(part.first())) {
      for (long rest = part.length(); rest > 0; ) {
        int count = bytes.read(block, 0, (int) Math.min(block.length, rest));
        ctx.outputStream().write(block, 0, count);
        rest -= count;
      }
    } catch (EofException gone) {
      LOG.debug("a player had enough of {}", ctx.path(), gone); // it does so when it is moved
    }
  }
}
