package planted.engineering.air;

import org.springframework.stereotype.Component;
import planted.engineering.flow.Neighbour;

/** Impure: a Spring bean in the core. Half of a cycle. */
@Component
public class SpringUser {
    public double twice(double[] values) {
        return 2 * new Neighbour().once(values);
    }
}
