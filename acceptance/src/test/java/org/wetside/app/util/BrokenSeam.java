package org.wetside.app.util;

/** An interface in front of nothing. */
interface BrokenSeam {
  void does();
}
