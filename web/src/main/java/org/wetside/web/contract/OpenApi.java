package org.wetside.web.contract;

import io.javalin.router.Endpoint;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.wetside.web.api.Problem;

/** The OpenAPI 3.1 document of the routes that are registered with a {@link Contract}. */
final class OpenApi {
  private static final Pattern IN_BRACES = Pattern.compile("\\{(\\w+)}");
  private static final String DESCRIPTION = "description";

  private final Schemas schemas = new Schemas();
  private final Map<String, Object> paths = new TreeMap<>();

  private OpenApi() {}

  /**
   * The document.
   *
   * @param version of the program
   * @param routes all that are registered; those without a contract are pages
   */
  static Map<String, Object> of(String version, List<Endpoint> routes) {
    OpenApi made = new OpenApi();
    routes.forEach(made::add);
    return made.document(version);
  }

  private void add(Endpoint route) {
    Contract contract = route.metadata(Contract.class);
    if (contract != null) {
      @SuppressWarnings("unchecked") // only made here
      Map<String, Object> path =
          (Map<String, Object>) paths.computeIfAbsent(route.path, fresh -> new LinkedHashMap<>());
      path.put(route.method.name().toLowerCase(Locale.ROOT), operation(route, contract));
    }
  }

  private Map<String, Object> document(String version) {
    Map<String, Object> document = new LinkedHashMap<>();
    document.put("openapi", "3.1.1");
    document.put(
        "info",
        Map.of(
            "title",
            "Wetside",
            "version",
            version,
            DESCRIPTION,
            "Everything the program computes and keeps, for programs on the same machine. The names of"
                + " numbers end with their unit, which x-unit repeats. An unknown field of a body"
                + " and an unknown query parameter are refused.",
            "license",
            Map.of("name", "Apache-2.0", "identifier", "Apache-2.0")));
    document.put("servers", List.of(Map.of("url", "/")));
    document.put("paths", paths);
    Map<String, Object> problem = schemas.of(Problem.class, Schemas.Way.ANSWERED);
    Map<String, Object> components = new LinkedHashMap<>();
    components.put("schemas", schemas.named());
    components.put(
        "responses",
        Map.of(
            "Problem",
            Map.of(
                DESCRIPTION,
                "Not done. exitCode: 1 there is no honest answer (422), 2 what was sent is refused"
                    + " (400, 403, 404, 405, 409), 3 it could not be done (409, 500).",
                "content",
                Map.of(Problem.MEDIA_TYPE, Map.of("schema", problem)))));
    document.put("components", components);
    return document;
  }

  private Map<String, Object> operation(Endpoint route, Contract contract) {
    Map<String, Object> operation = new LinkedHashMap<>();
    operation.put("summary", contract.summary());
    operation.put("tags", List.of(route.path.split("/", -1)[2].replace(".json", "")));
    List<Object> parameters = parameters(route.path, contract);
    if (!parameters.isEmpty()) {
      operation.put("parameters", parameters);
    }
    if (!contract.bodies().isEmpty()) {
      operation.put(
          "requestBody",
          Map.of("required", true, "content", contents(contract.bodies(), Schemas.Way.SENT)));
    }
    operation.put("responses", responses(contract));
    return operation;
  }

  private static List<Object> parameters(String path, Contract contract) {
    List<Object> parameters = new ArrayList<>();
    Matcher inPath = IN_BRACES.matcher(path);
    while (inPath.find()) {
      parameters.add(parameter(inPath.group(1), "path", true, ""));
    }
    contract
        .query()
        .forEach(
            word -> parameters.add(parameter(word.name(), "query", word.needed(), word.meaning())));
    return parameters;
  }

  private static Map<String, Object> parameter(
      String name, String in, boolean needed, String meaning) {
    Map<String, Object> parameter = new LinkedHashMap<>();
    parameter.put("name", name);
    parameter.put("in", in);
    parameter.put("required", needed);
    if (!meaning.isEmpty()) {
      parameter.put(DESCRIPTION, meaning);
    }
    parameter.put("schema", Map.of("type", "string"));
    return parameter;
  }

  private Map<String, Object> responses(Contract contract) {
    Map<String, List<Contract.Content>> byStatus = new TreeMap<>();
    for (Contract.Answer answer : contract.answers()) {
      List<Contract.Content> some =
          byStatus.computeIfAbsent(String.valueOf(answer.status()), fresh -> new ArrayList<>());
      if (answer.content() != null) {
        some.add(answer.content());
      }
    }
    Map<String, Object> responses = new LinkedHashMap<>();
    byStatus.forEach(
        (status, some) -> {
          Map<String, Object> response = new LinkedHashMap<>();
          response.put(DESCRIPTION, words(status));
          if (!some.isEmpty()) {
            response.put("content", contents(some, Schemas.Way.ANSWERED));
          }
          responses.put(status, response);
        });
    responses.put("default", Map.of("$ref", "#/components/responses/Problem"));
    return responses;
  }

  private static String words(String status) {
    return switch (status) {
      case "200" -> "Done.";
      case "201" -> "Made.";
      case "204" -> "Done; there is nothing to say.";
      default -> "Not done.";
    };
  }

  /** By media type; several records of one type are alternatives. */
  private Map<String, Object> contents(List<Contract.Content> contents, Schemas.Way way) {
    Map<String, List<Object>> byType = new LinkedHashMap<>();
    for (Contract.Content content : contents) {
      byType
          .computeIfAbsent(content.mediaType(), fresh -> new ArrayList<>())
          .add(
              content.type() == null
                  ? Map.of("type", "string", DESCRIPTION, content.meaning())
                  : schemas.of(content.type(), way));
    }
    Map<String, Object> all = new LinkedHashMap<>();
    byType.forEach(
        (type, some) ->
            all.put(
                type, Map.of("schema", some.size() == 1 ? some.get(0) : Map.of("oneOf", some))));
    return all;
  }
}
