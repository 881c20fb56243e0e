package planted.record;

import planted.kite.Kite;

/** Wrongly knows a feature. */
public class FeatureUser {
    public int length(Kite[] kites) {
        return kites.length;
    }
}
