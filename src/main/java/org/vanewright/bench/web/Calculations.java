package org.vanewright.bench.web;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import org.springframework.http.MediaType;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestMapping;
import org.springframework.web.bind.annotation.RestController;
import org.vanewright.bench.AirspeedCalculation;
import org.vanewright.bench.AirspeedRequest;
import org.vanewright.bench.AirspeedResult;
import org.vanewright.bench.AtmosphereCalculation;
import org.vanewright.bench.AtmosphereRequest;
import org.vanewright.bench.AtmosphereResult;
import org.vanewright.bench.BondCalculation;
import org.vanewright.bench.BondRequest;
import org.vanewright.bench.BondResult;
import org.vanewright.bench.SectionCalculation;
import org.vanewright.bench.SectionRequest;
import org.vanewright.bench.SectionResult;
import org.vanewright.bench.VaneCalculation;
import org.vanewright.bench.VaneRequest;
import org.vanewright.bench.VaneResult;
import org.vanewright.engineering.flow.FlatPlate;
import org.vanewright.engineering.flow.FlatPlateRequest;
import org.vanewright.engineering.flow.FlatPlateResult;
import org.vanewright.engineering.flow.Flow;
import org.vanewright.engineering.flow.FlowRequest;
import org.vanewright.engineering.flow.FlowResult;
import org.vanewright.engineering.unroll.UnrollCalculation;
import org.vanewright.engineering.unroll.UnrollRequest;
import org.vanewright.engineering.unroll.UnrollResult;

/** Calculations that answer in JSON. */
@RestController
@RequestMapping(
        path = "/api/v1/calculations",
        consumes = MediaType.APPLICATION_JSON_VALUE,
        produces = MediaType.APPLICATION_JSON_VALUE)
@Tag(name = Calculations.TAG, description = Calculations.ABOUT)
class Calculations {
    static final String TAG = "Calculations";
    static final String ABOUT =
            "Nothing is kept and no account is needed. Every answer says its method, its sources and,"
                    + " in validity, what to be wary of. A calculated figure is not an approval.";

    @PostMapping("/section")
    @Operation(
            summary = "Heights and arc lengths on the skin of a section",
            description =
                    "At each x/c given, the height of either skin and its distance along the skin from the leading"
                            + " edge, in chords.")
    SectionResult section(@RequestBody SectionRequest request) {
        return SectionCalculation.run(request);
    }

    @PostMapping("/atmosphere")
    @Operation(
            summary = "Air at a pressure altitude",
            description = "Standard atmosphere, or the day's temperature where it is given.")
    AtmosphereResult atmosphere(@RequestBody AtmosphereRequest request) {
        return AtmosphereCalculation.run(request);
    }

    @PostMapping("/airspeed")
    @Operation(
            summary = "Calibrated, equivalent and true airspeed",
            description = "From any one of calibrated airspeed, impact pressure and true airspeed, in subsonic flight.")
    AirspeedResult airspeed(@RequestBody AirspeedRequest request) {
        return AirspeedCalculation.run(request);
    }

    @PostMapping("/flow")
    @Operation(
            summary = "Flow over a section and its boundary layers",
            description =
                    "At an angle of attack or a lift coefficient; inviscid gives the potential flow alone. What lies"
                            + " behind turbulent separation is absent, and drag is where it is not claimed.")
    FlowResult flow(@RequestBody FlowRequest request) {
        return Flow.run(request);
    }

    @PostMapping("/flat-plate")
    @Operation(
            summary = "Boundary layer on a flat plate",
            description = "Laminar by Blasius, or turbulent from the leading edge by the one-seventh power law.")
    FlatPlateResult flatPlate(@RequestBody FlatPlateRequest request) {
        return FlatPlate.run(request);
    }

    @PostMapping("/vane")
    @Operation(
            summary = "Circulation behind one vane",
            description = "By Wendt's fit; its range stands in validity. An estimate for printed vanes.")
    VaneResult vane(@RequestBody VaneRequest request) {
        return VaneCalculation.run(request);
    }

    @PostMapping("/bond")
    @Operation(
            summary = "Stress under one base, and the margins of its adhesive",
            description = "At a speed, or under a force that is known. Strength over demand; no margin is an approval.")
    BondResult bond(@RequestBody BondRequest request) {
        return BondCalculation.run(request);
    }

    @PostMapping("/unroll")
    @Operation(
            summary = "Places of a panel's skin on its flat sheet",
            description = "Exact where the skin is a cylinder or a cone; otherwise with the largest strain.")
    UnrollResult unroll(@RequestBody UnrollRequest request) {
        return UnrollCalculation.run(request);
    }
}
