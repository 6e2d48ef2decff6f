package org.wetside.app;

/** An interface in front of nothing. */
interface BrokenSeam {
  void does();
}
