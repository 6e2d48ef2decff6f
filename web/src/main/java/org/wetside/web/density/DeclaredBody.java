package org.wetside.web.density;

/**
 * What somebody says of a picture.
 *
 * @param linear that it was scanned linear
 */
public record DeclaredBody(boolean linear) {}
