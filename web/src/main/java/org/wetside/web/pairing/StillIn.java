package org.wetside.web.pairing;

import io.javalin.http.Context;
import java.util.function.BooleanSupplier;

/** Whether who asked may still be answered: a line stays open longer than a screen stays paired. */
public final class StillIn {
  private static final String ATTRIBUTE = "wetside.still-in";

  private StillIn() {}

  /** False from the moment on in which the screen was removed. */
  public static boolean check(Context ctx) {
    BooleanSupplier still = ctx.attribute(ATTRIBUTE);
    return still == null || still.getAsBoolean();
  }

  static void remember(Context ctx, BooleanSupplier still) {
    ctx.attribute(ATTRIBUTE, still);
  }
}
