package org.wetside.store;

import java.sql.SQLException;
import java.util.concurrent.Callable;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/** What the database says when it refuses, in words that say what is the matter with the disk. */
final class SqliteWords {
  private static final int PRIMARY_CODE = 0xff;

  private SqliteWords() {}

  /**
   * Does it.
   *
   * @param work throws nothing that is checked but {@link SQLException}
   * @param what for the message, for example {@code reading /home/x/wetside.db}
   * @throws StoreException when the database refuses
   */
  static <T> T doing(Callable<T> work, String what) {
    try {
      return work.call();
    } catch (SQLException refused) {
      String reason = reason(refused);
      throw reason.isEmpty()
          ? new StoreException(what, refused)
          : StoreException.saying(what + ": " + reason, refused);
    } catch (RuntimeException known) {
      throw known;
    } catch (Exception impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /** Empty when SQLite's own words are the best there are. */
  private static String reason(SQLException refused) {
    if (!(refused instanceof SQLiteException known)) {
      return "";
    }
    int code = known.getResultCode().code & PRIMARY_CODE;
    if (code == SQLiteErrorCode.SQLITE_FULL.code) {
      return "the disk is full";
    }
    if (code == SQLiteErrorCode.SQLITE_NOTADB.code) {
      return "it is not a database, or its beginning is damaged";
    }
    if (code == SQLiteErrorCode.SQLITE_CORRUPT.code) {
      return "it is damaged (" + known.getMessage() + ")";
    }
    if (code == SQLiteErrorCode.SQLITE_CANTOPEN.code
        || code == SQLiteErrorCode.SQLITE_READONLY.code
        || code == SQLiteErrorCode.SQLITE_PERM.code) {
      return "the system does not let it be opened";
    }
    if (code == SQLiteErrorCode.SQLITE_IOERR.code) {
      return "the disk could not read or write it (" + known.getResultCode() + ")";
    }
    return "";
  }
}
