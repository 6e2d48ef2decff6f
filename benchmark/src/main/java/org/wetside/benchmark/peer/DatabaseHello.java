package org.wetside.benchmark.peer;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Properties;
import java.util.concurrent.Callable;
import org.sqlite.JDBC;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The smallest picocli command that reads a SQLite database: counts its tables. */
@Command(name = "tables", mixinStandardHelpOptions = true, description = "Count the tables.")
public final class DatabaseHello implements Callable<Integer> {
  @Parameters(paramLabel = "FILE", description = "a SQLite database")
  String file = "";

  @Spec CommandSpec spec = CommandSpec.create();

  /** Runs it. */
  public static void main(String[] arguments) {
    System.exit(new CommandLine(new DatabaseHello()).execute(arguments));
  }

  @Override
  public Integer call() throws SQLException {
    try (Connection connection = JDBC.createConnection(JDBC.PREFIX + file, new Properties());
        Statement statement = connection.createStatement();
        ResultSet result = statement.executeQuery("SELECT count(*) FROM sqlite_schema")) {
      spec.commandLine().getOut().println(result.getInt(1));
    }
    return 0;
  }
}
