import java.math.RoundingMode;
import java.time.*;
import java.util.*;
import javax.measure.*;
import javax.measure.quantity.*;
import org.joda.money.*;
import tech.units.indriya.quantity.Quantities;
