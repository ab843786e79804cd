package holdcurve.training;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.Base64;
import javax.crypto.Cipher;
import javax.crypto.spec.GCMParameterSpec;
import javax.crypto.spec.SecretKeySpec;

/**
 * Closes the answer of an exercise against a glance into the file: one who reads the program can
 * open it. Every seal is as long as any other, so its length says nothing.
 */
public final class Seal {
  private static final int LENGTH = 480;
  private static final int NONCE = 12;
  private static final int TAG_BITS = 128;

  private Seal() {}

  /**
   * @param text at most 480 bytes in UTF-8
   * @param context what it belongs to; a seal doesn't open with another
   */
  public static String close(String text, String context) {
    byte[] plain = text.getBytes(StandardCharsets.UTF_8);
    if (plain.length > LENGTH) {
      throw new IllegalArgumentException("the answer is longer than " + LENGTH + " bytes");
    }
    byte[] padded = Arrays.copyOf(plain, LENGTH);
    byte[] nonce = Arrays.copyOf(digest(context + text), NONCE);
    byte[] closed = run(Cipher.ENCRYPT_MODE, padded, nonce, context);
    byte[] all = ByteBuffer.allocate(NONCE + closed.length).put(nonce).put(closed).array();
    return Base64.getEncoder().encodeToString(all);
  }

  /**
   * @throws IllegalArgumentException if it was changed or belongs to something else
   */
  public static String open(String seal, String context) {
    byte[] all = Base64.getDecoder().decode(seal);
    if (all.length != NONCE + LENGTH + TAG_BITS / 8) {
      throw new IllegalArgumentException("the seal is damaged");
    }
    byte[] closed = Arrays.copyOfRange(all, NONCE, all.length);
    byte[] padded = run(Cipher.DECRYPT_MODE, closed, Arrays.copyOf(all, NONCE), context);
    int length = LENGTH;
    while (length > 0 && padded[length - 1] == 0) {
      length--;
    }
    return new String(padded, 0, length, StandardCharsets.UTF_8);
  }

  private static byte[] run(int mode, byte[] text, byte[] nonce, String context) {
    try {
      Cipher cipher = Cipher.getInstance("AES/GCM/NoPadding");
      byte[] key = Arrays.copyOf(digest("training bay"), 16);
      cipher.init(mode, new SecretKeySpec(key, "AES"), new GCMParameterSpec(TAG_BITS, nonce));
      cipher.updateAAD(context.getBytes(StandardCharsets.UTF_8));
      return cipher.doFinal(text);
    } catch (GeneralSecurityException e) {
      throw new IllegalArgumentException("the seal is damaged", e);
    }
  }

  private static byte[] digest(String text) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException(e);
    }
  }
}
