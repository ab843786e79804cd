package holdcurve.common.text;

import holdcurve.common.input.Cancellation;
import holdcurve.common.input.InputException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * Turns bytes into text: UTF-8 unless something says otherwise. A byte-order mark decides first;
 * zero bytes in every second place mean UTF-16; bytes that are not UTF-8 are taken as Windows-1252,
 * in which every byte means something.
 */
final class TextDecoder {
  private static final Charset WINDOWS = Charset.forName("windows-1252");
  private static final int LOOKED_AT = 4096;

  private TextDecoder() {}

  /**
   * @param remedy what would be right, where these bytes are no text
   */
  static TextFile decode(String name, byte[] bytes, String remedy) {
    foreignKind(bytes)
        .ifPresent(
            kind -> {
              throw InputException.at(name, "", "this is " + kind + ", not a text file", remedy);
            });
    TextFile text = text(name, bytes);
    if (text.text().indexOf('\0') >= 0) {
      throw InputException.at(name, "", "this is not a text file", remedy);
    }
    return text;
  }

  private static TextFile text(String name, byte[] bytes) {
    Optional<Charset> wide = utf16(bytes);
    if (wide.isPresent()) {
      return new TextFile(name, new String(bytes, wide.get()), "UTF-16");
    }
    Cancellation.check();
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return new TextFile(name, text, "");
    } catch (CharacterCodingException e) {
      return new TextFile(name, new String(bytes, WINDOWS), "Windows-1252");
    }
  }

  /** Signatures at the start of files that people rename or export by mistake. */
  private static Optional<String> foreignKind(byte[] bytes) {
    int head = 0;
    for (int i = 0; i < 4; i++) {
      head = head << 8 | (i < bytes.length ? bytes[i] & 0xff : 0);
    }
    if (head >>> 16 == 0x1f8b) {
      return Optional.of("a gzip archive");
    }
    return switch (head) {
      case 0x504b0304, 0x504b0506 -> Optional.of("a zip archive or a spreadsheet workbook");
      case 0x25504446 -> Optional.of("a PDF document");
      case 0xd0cf11e0 -> Optional.of("an old spreadsheet workbook");
      case 0x89504e47 -> Optional.of("a PNG picture");
      case 0xffd8ffe0, 0xffd8ffe1 -> Optional.of("a JPEG picture");
      case 0x377abcaf -> Optional.of("a 7z archive");
      default -> Optional.empty();
    };
  }

  private static Optional<Charset> utf16(byte[] bytes) {
    int head = bytes.length < 2 ? 0 : (bytes[0] & 0xff) << 8 | bytes[1] & 0xff;
    if (head == 0xfffe) {
      return Optional.of(StandardCharsets.UTF_16LE);
    }
    if (head == 0xfeff) {
      return Optional.of(StandardCharsets.UTF_16BE);
    }
    int[] zeros = new int[2];
    int looked = Math.min(bytes.length, LOOKED_AT);
    for (int i = 0; i < looked; i++) {
      zeros[i & 1] += bytes[i] == 0 ? 1 : 0;
    }
    if (zeros[1] > looked / 4 && zeros[0] == 0) {
      return Optional.of(StandardCharsets.UTF_16LE);
    }
    return zeros[0] > looked / 4 && zeros[1] == 0
        ? Optional.of(StandardCharsets.UTF_16BE)
        : Optional.empty();
  }
}
