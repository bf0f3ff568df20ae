package lodeswing.job;

import java.util.concurrent.ThreadFactory;

/**
 * Makes threads that do not keep the process alive.
 *
 * @param name of each of them
 */
public record BackgroundThread(String name) implements ThreadFactory {

  @Override
  public Thread newThread(Runnable task) {
    var thread = new Thread(task, name);
    thread.setDaemon(true);
    return thread;
  }
}
