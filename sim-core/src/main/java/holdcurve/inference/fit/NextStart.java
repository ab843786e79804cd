package holdcurve.inference.fit;

import holdcurve.fault.FaultParameter;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.likelihood.HypothesisModel;
import holdcurve.inference.likelihood.Latents;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Where to look for the fit of one hypothesis once another has been fitted well: what they share is
 * taken over, and so is the size of the leak. Likely explanations lie near one another, and a
 * search from nowhere may miss the neighbourhood.
 */
public final class NextStart {
  /** A fault that the fitted hypothesis hasn't begins small [-]. */
  private static final double SMALL = -2;

  private NextStart() {}

  /** From where another hypothesis fits best. */
  public static Start of(HypothesisModel model, Fitted from) {
    HypothesisModel other = from.model();
    List<Hypothesis.Member> members = model.latentMap().hypothesis().members();
    List<Hypothesis.Member> fitted = other.latentMap().hypothesis().members();
    boolean akin = members.stream().anyMatch(m -> place(m, fitted) >= 0);
    List<Integer> like = new ArrayList<>();
    for (int i = 0; i < members.size(); i++) {
      int place = place(members.get(i), fitted);
      boolean standsIn = !akin && i == 0 && !fitted.isEmpty() && alike(members.get(0), fitted);
      for (int k = 0; k < members.get(i).fault().parameters().size(); k++) {
        like.add(place >= 0 ? place + k : standsIn && k == 0 ? 0 : -1);
      }
    }
    return start(model, from, like, members.size() > fitted.size() ? SMALL : 0);
  }

  /**
   * Likewise, from the fit of an equivalent: each leak as large as its partner's there.
   *
   * @param partners for each member, its place among those of the other
   */
  public static Start ofEquivalent(HypothesisModel model, Fitted from, int[] partners) {
    HypothesisModel other = from.model();
    List<Hypothesis.Member> members = model.latentMap().hypothesis().members();
    List<Hypothesis.Member> fitted = other.latentMap().hypothesis().members();
    List<Integer> like = new ArrayList<>();
    for (int i = 0; i < members.size(); i++) {
      Hypothesis.Member partner = fitted.get(partners[i]);
      boolean same = members.get(i).id().equals(partner.id());
      int first = place(partner, fitted);
      for (int k = 0; k < members.get(i).fault().parameters().size(); k++) {
        like.add(same || k == 0 ? first + k : -1);
      }
    }
    return start(model, from, like, 0);
  }

  /**
   * @param like for each parameter the like parameter there, or −1 for none
   * @param unlike coordinate for a parameter that the other hasn't [-]
   */
  private static Start start(
      HypothesisModel model, Fitted from, List<Integer> like, double unlike) {
    Latents latents = model.latentMap().latents();
    Latents others = from.model().latentMap().latents();
    Fit fit = from.best();
    int[] places = latents.placesIn(others, like.stream().mapToInt(Integer::intValue).toArray());
    int[] curve = others.curve();
    double[] u = new double[places.length];
    double[][] sensitivities = new double[places.length][];
    for (int j = 0; j < places.length; j++) {
      boolean parameter = j >= latents.parameterIndex(0) && j < latents.commonCount();
      u[j] = places[j] >= 0 ? fit.u()[places[j]] : parameter ? unlike : 0;
      int column = Arrays.binarySearch(curve, places[j]);
      sensitivities[j] = column < 0 ? null : fit.column(column);
    }
    return new Start(u, sensitivities);
  }

  /** First parameter of a member in another hypothesis; -1 where it isn't in it. */
  private static int place(Hypothesis.Member member, List<Hypothesis.Member> in) {
    int first = 0;
    for (Hypothesis.Member other : in) {
      if (other.id().equals(member.id())) {
        return first;
      }
      first += other.fault().parameters().size();
    }
    return -1;
  }

  /** Whether its size is of the same kind. */
  private static boolean alike(Hypothesis.Member member, List<Hypothesis.Member> fitted) {
    FaultParameter size = member.fault().parameters().get(0);
    return size.unit() == fitted.get(0).fault().parameters().get(0).unit();
  }
}
