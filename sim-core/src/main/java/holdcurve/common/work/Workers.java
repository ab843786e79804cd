package holdcurve.common.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;

/** Does independent work on several threads; results come in the order of the work. */
public final class Workers implements AutoCloseable {
  private static final long PATIENCE_MS = 20;

  private final ExecutorService threads;
  private final Progress progress;
  private final List<String> problems;

  /**
   * @param problems receives a sentence for each piece of work that failed
   */
  public Workers(int threads, Progress progress, List<String> problems) {
    this.threads = Executors.newFixedThreadPool(threads, Workers::daemon);
    this.progress = progress;
    this.problems = problems;
  }

  private static Thread daemon(Runnable work) {
    Thread thread = new Thread(work, "ranking");
    thread.setDaemon(true);
    return thread;
  }

  public Progress progress() {
    return progress;
  }

  /**
   * @param name of a piece of work, for people
   * @param from share of everything that is done before [-]
   * @param to share that is done after [-]
   * @return results of the work that didn't fail
   * @throws CancellationException if the user says so
   */
  public <A, B> List<B> each(
      List<A> all,
      Function<A, String> name,
      Function<A, Optional<B>> work,
      double from,
      double to) {
    AtomicInteger done = new AtomicInteger();
    List<Future<Optional<B>>> running = new ArrayList<>();
    for (A one : all) {
      running.add(
          threads.submit(
              () -> {
                stopIfCancelled(progress);
                Optional<B> result = work.apply(one);
                double share = done.incrementAndGet() / (double) all.size();
                progress.at(from + (to - from) * share, name.apply(one));
                return result;
              }));
    }
    List<B> results = new ArrayList<>();
    for (int i = 0; i < running.size(); i++) {
      outcome(running.get(i), name.apply(all.get(i))).ifPresent(results::add);
    }
    return results;
  }

  private <B> Optional<B> outcome(Future<Optional<B>> future, String name) {
    try {
      Optional<B> result = awaited(future);
      if (result.isEmpty()) {
        problems.add("'" + name + "' could not be simulated for this circuit and is left out.");
      }
      return result;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new CancellationException("interrupted");
    } catch (ExecutionException e) {
      if (e.getCause() instanceof CancellationException cancelled) {
        throw cancelled;
      }
      if (e.getCause() instanceof ComputationException) {
        problems.add("'" + name + "' failed and is left out: " + e.getCause().getMessage());
        return Optional.empty();
      }
      throw new IllegalStateException("'" + name + "' failed", e.getCause());
    }
  }

  /** Asks between whiles whether to go on: the work itself knows only of interruption. */
  private <B> Optional<B> awaited(Future<Optional<B>> future)
      throws InterruptedException, ExecutionException {
    while (true) {
      try {
        return future.get(PATIENCE_MS, TimeUnit.MILLISECONDS);
      } catch (TimeoutException e) {
        stopIfCancelled(progress);
      }
    }
  }

  public static void stopIfCancelled(Progress progress) {
    if (progress.isCancelled()) {
      throw new CancellationException("the ranking was cancelled");
    }
  }

  /** Interrupts what is still running. */
  @Override
  public void close() {
    threads.shutdownNow();
  }
}
