package org.vanewright.engineering.flow;

import java.util.List;
import java.util.stream.Stream;

/** How flows are computed and by whom, for the people who read the results. */
final class FlowMethod {
    static final String POTENTIAL =
            "Potential flow: straight panels between points on the skin, crowded where it bends;"
                    + " vorticity linear along each panel; the stream function is constant on the skin and the speeds on both"
                    + " sides are equal at the trailing edge (Kutta's condition). Lift and moment from the pressure on the skin.";

    static final String VISCOUS =
            POTENTIAL + " Boundary layers from the stagnation point rearward on both sides: laminar"
                    + " by Thwaites with the correlations of Cebeci and Bradshaw, separation at lambda = -0.09; transition where"
                    + " fixed, else by Michel's criterion or at laminar separation; turbulent by Head's entrainment with the"
                    + " friction law of Ludwieg and Tillmann from H = 1.4, separation at H = 2.4. Each layer displaces the outer"
                    + " flow as sources on the skin and a wake of constant displacement would, smoothed over some"
                    + " momentum thicknesses and about transition over a part of the length that it takes; layers and outer flow are"
                    + " computed in turns until they agree, with steps from both their laws made linear. Profile drag by Squire and"
                    + " Young.";

    static final List<String> POTENTIAL_SOURCES =
            List.of("J. Katz, A. Plotkin, Low-Speed Aerodynamics, 2nd ed., 2001, chapters 9 to 11 (panel methods)");

    static final List<String> VISCOUS_SOURCES = Stream.concat(
                    POTENTIAL_SOURCES.stream(),
                    Stream.of(
                            "B. Thwaites, Approximate calculation of the laminar boundary layer, Aeronautical Quarterly 1"
                                    + " (1949) 245-280",
                            "R. Michel, Etude de la transition sur les profils d'aile, ONERA Rapport 1/1578A, 1951",
                            "M. R. Head, Entrainment in the turbulent boundary layer, ARC R&M 3152, 1958",
                            "H. Ludwieg, W. Tillmann, Investigations of the wall shearing stress in turbulent boundary"
                                    + " layers, NACA TM 1285, 1950",
                            "T. Cebeci, P. Bradshaw, Momentum Transfer in Boundary Layers, 1977 (correlations for both"
                                    + " methods)",
                            "M. J. Lighthill, On displacement thickness, Journal of Fluid Mechanics 4 (1958) 383-392",
                            "S. Dhawan, R. Narasimha, Some properties of boundary layer flow during the transition from"
                                    + " laminar to turbulent motion, Journal of Fluid Mechanics 3 (1958) 418-436 (from memory)",
                            "A. E. P. Veldman, New, quasi-simultaneous method to calculate interacting boundary layers,"
                                    + " AIAA Journal 19 (1981) 79-85 (from memory)",
                            "H. B. Squire, A. D. Young, The calculation of the profile drag of aerofoils, ARC R&M 1838,"
                                    + " 1938"))
            .toList();

    private FlowMethod() {}
}
