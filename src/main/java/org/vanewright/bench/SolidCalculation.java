package org.vanewright.bench;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.springframework.stereotype.Component;
import org.vanewright.device.DeviceDocument;
import org.vanewright.device.DeviceRules;
import org.vanewright.device.DeviceSolids;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.engineering.solid.DesignRules;
import org.vanewright.engineering.solid.MassProperties;
import org.vanewright.engineering.solid.Mesh;
import org.vanewright.engineering.solid.SolidLabel;
import org.vanewright.engineering.solid.StlWriter;
import org.vanewright.engineering.solid.ThreeMfWriter;
import org.vanewright.platform.Downloads;

/** The solid of a design that is not, or not yet, published. */
@Component
public class SolidCalculation {
    private static final double UNIT_DENSITY_KG_M3 = 1000;
    private static final String METHOD = "One closed mesh of the vanes, fillets and base, curves within the chord"
            + " tolerance; volume and centre of mass by the divergence theorem over its triangles; mass is volume times"
            + " density, for a piece printed solid.";
    private static final List<String> SOURCES = List.of(
            "B. Mirtich, Fast and Accurate Computation of Polyhedral Mass Properties, Journal of Graphics Tools 1(2),"
                    + " 1996");

    private final DeviceSolids solids;

    SolidCalculation(DeviceSolids solids) {
        this.solids = solids;
    }

    /** @throws InvalidInputException with every problem of the device */
    public SolidResult figures(SolidRequest request) {
        DeviceDocument device = device(request);
        Mesh mesh = solids.exact(device.design());
        Double density = device.densityKgM3();
        MassProperties p = MassProperties.of(mesh, density == null ? UNIT_DENSITY_KG_M3 : density);
        return new SolidResult(
                p.volumeMm3(),
                p.areaMm2(),
                mesh.vertexCount(),
                mesh.triangleCount(),
                p.boundingBoxMm(),
                density == null ? null : p.massG(),
                p.centreOfMassMm(),
                METHOD,
                SOURCES,
                validity(device));
    }

    /** Binary STL. @throws InvalidInputException with every problem of the device */
    public byte[] stl(SolidRequest request) {
        DeviceDocument device = device(request);
        return StlWriter.write(solids.exact(device.design()), label(device));
    }

    /** 3MF. @throws InvalidInputException with every problem of the device */
    public byte[] threeMf(SolidRequest request) {
        DeviceDocument device = device(request);
        return ThreeMfWriter.write(solids.exact(device.design()), label(device));
    }

    private static DeviceDocument device(SolidRequest request) {
        DeviceDocument device = request.device();
        List<FieldProblem> problems = DeviceRules.check(device);
        if (!problems.isEmpty()) {
            throw new InvalidInputException(problems);
        }
        return device;
    }

    /** It has no revision: number 0, and the hash of the design with its defaults filled in. */
    private static SolidLabel label(DeviceDocument device) {
        String design = DesignRules.withDefaults(device.design()).toString();
        return new SolidLabel(
                device.name(), device.name(), 0, Downloads.sha256(design.getBytes(StandardCharsets.UTF_8)));
    }

    private static List<String> validity(DeviceDocument device) {
        List<String> warnings = new ArrayList<>();
        Double thickness = device.vane() == null ? null : device.vane().thicknessMm();
        if (thickness != null && thickness < 0.8) {
            warnings.add(String.format(
                    Locale.ROOT,
                    "A vane %.2f mm thick is less than two lines of a common 0.4 mm nozzle (common practice, no source).",
                    thickness));
        }
        return warnings;
    }
}
