package org.wetside.cli;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.concurrent.CountDownLatch;

/** What has to be closed when serving ends: newest first, each once, however often it is asked. */
final class Closing {
  private final Deque<Runnable> left = new ArrayDeque<>();
  private final CountDownLatch done = new CountDownLatch(1);

  /** Will close this too; does so at once when the end has already come. */
  synchronized void add(Runnable closing) {
    left.push(closing);
    if (done.getCount() == 0) {
      now();
    }
  }

  /** Closes what is left. When one fails, the others are closed all the same. */
  synchronized void now() {
    try {
      while (!left.isEmpty()) {
        left.pop().run();
      }
    } finally {
      if (left.isEmpty()) {
        done.countDown();
      } else {
        now();
      }
    }
  }

  /** Waits until all is closed. */
  void await() throws InterruptedException {
    done.await();
  }
}
