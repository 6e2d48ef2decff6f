package org.wetside.app.screens;

import java.time.Instant;

/**
 * A code that lets one screen in, once.
 *
 * @param key 128 bits of chance; stands in the address that the drawn code holds
 * @param figures eight figures, for a device without a camera
 * @param until when it ends, used or not
 */
public record Invitation(String key, String figures, Instant until) {}
