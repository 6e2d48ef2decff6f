package org.wetside.web.formula;

/**
 * Where it went.
 *
 * @param letter of a bottle on the shelf
 */
public record BatchBottleBody(String letter) {}
