package org.vanewright.platform;

/** What belongs to one caller in a network. */
public final class Networks {
    private Networks() {}

    /** The address; of an IPv6 caller, who usually owns a whole /64, its first four groups. */
    public static String of(String address) {
        if (!address.contains(":") || address.contains(".")) {
            return address;
        }
        String[] groups = address.split("%", 2)[0].split(":", -1);
        StringBuilder network = new StringBuilder();
        for (int i = 0; i < Math.min(4, groups.length) && !groups[i].isEmpty(); i++) {
            network.append(groups[i]).append(':');
        }
        return network.isEmpty() ? address : network.toString();
    }
}
