package planted.engineering.air;

import planted.kite.Kite;

/** Impure: the core knows a feature. */
public class FeatureUser {
    public int length(Kite kite) {
        return kite.name().length();
    }
}
