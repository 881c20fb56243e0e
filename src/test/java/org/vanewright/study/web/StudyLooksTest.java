package org.vanewright.study.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.springframework.mock.web.MockHttpServletRequest;
import org.springframework.mock.web.MockHttpServletResponse;
import org.springframework.ui.ExtendedModelMap;
import org.springframework.ui.Model;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.platform.form.Form;

/** What is missing is asked for; only what was sent and is wrong is refused. */
class StudyLooksTest {
    private static final FieldProblem MASS = new FieldProblem("massKg", "null", "a mass from 30 to 5700 kg");
    private static final FieldProblem SPEED =
            new FieldProblem("calibratedAirspeedKt", "null", "a calibrated airspeed from 10 to 250 kt");

    private final Model model = new ExtendedModelMap();

    private int status(String query, FieldProblem... problems) {
        MockHttpServletRequest request = new MockHttpServletRequest();
        for (String pair : query.split("&")) {
            if (pair.contains("=")) {
                request.setParameter(pair.split("=", 2)[0], pair.split("=", 2)[1]);
            }
        }
        Form form = Form.posted(request.getParameterMap());
        MockHttpServletResponse response = new MockHttpServletResponse();
        StudyLooks.refuse(List.of(problems), form, request, model);
        StudyLooks.status(form, request, response);
        return response.getStatus();
    }

    @Test
    void aFirstVisitIsAskedForWhatTheAirframeDoesNotState() {
        assertThat(status("", MASS, SPEED)).isEqualTo(200);
        assertThat(model.getAttribute("missing")).asList().hasSize(2);
        assertThat(status("condition=APPROACH", MASS)).isEqualTo(200);
    }

    @Test
    void whatWasTypedOrChosenIsRefused() {
        assertThat(status("massKg=99999", MASS)).isEqualTo(400);
        assertThat(status("condition=SPEED", SPEED)).isEqualTo(400);
        assertThat(status("heightMm=-1", new FieldProblem("heightMm", "-1", "1 to 60 mm"), MASS))
                .isEqualTo(400);
        assertThat(model.getAttribute("missing")).isNull();
    }
}
