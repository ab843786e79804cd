package holdcurve.fault;

import java.time.Duration;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * How a plugin is asked something: at once where it is part of the program, on another thread with
 * a time limit where it came from a folder. Whatever it throws comes back as a {@link
 * FaultFailure}.
 */
abstract class PluginCall {
  /** What a plugin from a folder may take for one answer. */
  static final Duration USUAL_LIMIT = Duration.ofSeconds(2);

  /**
   * @param who what to call the plugin in a message
   * @param about the question, such as "it was asked for its sites"
   */
  final <T> T ask(String who, String about, Callable<T> question) {
    try {
      return answer(who, about, question);
    } catch (FaultFailure | Interrupted e) {
      throw e;
    } catch (Throwable e) {
      String what = "failed when " + about + " (" + FaultFailure.words(e) + ")";
      throw new FaultFailure(who, what, e);
    }
  }

  abstract <T> T answer(String who, String about, Callable<T> question) throws Throwable;

  /** The one who asked was told to stop: no fault of the plugin. */
  private static final class Interrupted extends CancellationException {
    Interrupted() {
      super("interrupted while a fault plugin was asked");
    }
  }

  /** On the caller's own thread. */
  static PluginCall direct() {
    return new Direct();
  }

  /** On a thread of its own, given up after {@code limit}. One for each jar. */
  static PluginCall limited(Duration limit) {
    return new Limited(limit);
  }

  private static final class Direct extends PluginCall {
    @Override
    <T> T answer(String who, String about, Callable<T> question) throws Exception {
      return question.call();
    }
  }

  /**
   * A thread that doesn't come back can't be stopped in Java; it is a daemon, and once there is one
   * the jar isn't asked anything more.
   */
  private static final class Limited extends PluginCall {
    private static final ExecutorService THREADS =
        Executors.newCachedThreadPool(
            task -> {
              Thread thread = new Thread(task, "fault plugin");
              thread.setDaemon(true);
              return thread;
            });

    private final Duration limit;
    private volatile boolean stuck;

    Limited(Duration limit) {
      this.limit = limit;
    }

    @Override
    <T> T answer(String who, String about, Callable<T> question) throws Throwable {
      if (stuck) {
        throw new FaultFailure(who, "is not asked any more, since its jar left a question hanging");
      }
      Future<T> running = THREADS.submit(question);
      try {
        return running.get(limit.toMillis(), TimeUnit.MILLISECONDS);
      } catch (TimeoutException e) {
        stuck = true;
        running.cancel(true);
        throw new FaultFailure(who, "gave no answer within " + seconds() + " when " + about);
      } catch (InterruptedException e) {
        running.cancel(true);
        Thread.currentThread().interrupt();
        throw new Interrupted();
      } catch (ExecutionException e) {
        throw e.getCause();
      }
    }

    private String seconds() {
      return limit.toMillis() / 1000.0 + " s";
    }
  }
}
