package fifthform.curves.forecast;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fifthform.curves.input.MakerAction.Place;
import org.junit.jupiter.api.Test;

class CourseTest {
    /** Its wall, cold from the water before, draws it down by what is left of that, and no further. */
    @Test
    void overWarmerWaterItSinksOnlyAsLongAsItsWallIsCold() {
        Course course = new Course(Place.BATH, 27, -0.5 / 60, 0, 36, 43);
        double after = course.at(180);
        assertEquals(27 - 0.5 / 60 * 36, after, 0.01);
        assertTrue(course.rateAt(180) > -1e-4, course.rateAt(180) + " K/s");
    }

    /** A bath that has gone cold does draw it down, as long as it is colder. */
    @Test
    void overColderWaterItGoesOnSinking() {
        Course course = new Course(Place.BATH, 31, -0.5 / 60, 0, 36, 29);
        assertTrue(course.at(180) < 30, course.at(180) + " °C");
    }
}
