package holdcurve.ui.window.holdtests;

import java.lang.System.Logger.Level;
import javax.sound.sampled.AudioFormat;
import javax.sound.sampled.AudioSystem;
import javax.sound.sampled.Clip;
import javax.sound.sampled.LineEvent;
import javax.sound.sampled.LineUnavailableException;

/** A short tone; nothing where the computer has no sound. */
final class Beep {
  private static final System.Logger LOG = System.getLogger(Beep.class.getName());
  private static final float RATE = 22_050;

  /** Heard well over workshop noise, and short: from memory [Hz], [s]. */
  private static final double PITCH = 1500;

  private static final double LENGTH = 0.2;

  private Beep() {}

  static void sound() {
    byte[] samples = new byte[(int) (RATE * LENGTH)];
    for (int i = 0; i < samples.length; i++) {
      samples[i] = (byte) (100 * Math.sin(2 * Math.PI * PITCH * i / RATE));
    }
    try {
      Clip clip = AudioSystem.getClip();
      clip.addLineListener(
          event -> {
            if (event.getType() == LineEvent.Type.STOP) {
              clip.close();
            }
          });
      clip.open(new AudioFormat(RATE, 8, 1, true, false), samples, 0, samples.length);
      clip.start();
    } catch (LineUnavailableException | IllegalArgumentException e) {
      LOG.log(Level.INFO, "no sound here", e);
    }
  }
}
