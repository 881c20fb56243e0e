package org.vanewright.platform;

/** Parts of the largest heap, so that what is kept in memory fits into whatever an instance was given. */
public final class HeapShare {
    private static final int THOUSAND = 1000;

    private HeapShare() {}

    /** So many thousandths of it. */
    public static long bytes(int thousandths) {
        return Runtime.getRuntime().maxMemory() / THOUSAND * thousandths;
    }
}
