package org.vanewright.account;

/** Base 32 without padding (S. Josefsson, 2006, RFC 4648, section 6), as apps for one-time codes read secrets. */
final class Base32 {
    private static final String ALPHABET = "ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";
    private static final int BITS = 5;
    private static final int MASK = 31;

    private Base32() {}

    static String encode(byte[] bytes) {
        StringBuilder text = new StringBuilder();
        int buffer = 0;
        int bits = 0;
        for (byte b : bytes) {
            buffer = (buffer << Byte.SIZE) | (b & 0xff);
            bits += Byte.SIZE;
            while (bits >= BITS) {
                bits -= BITS;
                text.append(ALPHABET.charAt((buffer >>> bits) & MASK));
            }
        }
        if (bits > 0) {
            text.append(ALPHABET.charAt((buffer << (BITS - bits)) & MASK));
        }
        return text.toString();
    }
}
