package org.wetside.core.learning;

/**
 * What has a factor of its own: one film in one developer.
 *
 * @param filmCode code of the coating
 * @param developer name of the developer
 */
public record FilmInDeveloper(String filmCode, String developer) {}
