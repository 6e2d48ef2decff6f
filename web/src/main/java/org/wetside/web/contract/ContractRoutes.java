package org.wetside.web.contract;

import io.javalin.config.RoutesConfig;
import io.javalin.http.HttpStatus;
import io.javalin.router.Endpoint;
import java.util.List;
import java.util.function.Supplier;
import org.wetside.web.Routes;
import org.wetside.web.api.Json;

/** {@code GET /api/openapi.json}: the interface described by itself. */
public final class ContractRoutes implements Routes {
  private final Supplier<List<Endpoint>> registered;

  /**
   * @param registered every route of the running server; asked when the document is asked for
   */
  public ContractRoutes(Supplier<List<Endpoint>> registered) {
    this.registered = registered;
  }

  @Override
  public void register(RoutesConfig routes) {
    routes.addEndpoint(
        Operation.get("/api/openapi.json", "This description, as OpenAPI 3.1")
            .gives(HttpStatus.OK, "application/json", "An OpenAPI document.")
            .handledBy(
                ctx ->
                    ctx.result(Json.write(OpenApi.of(version(), registered.get())))
                        .contentType("application/json")));
  }

  private static String version() {
    String packaged = ContractRoutes.class.getPackage().getImplementationVersion();
    return packaged == null ? "not packaged" : packaged;
  }
}
