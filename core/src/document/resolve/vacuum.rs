//! The air in the shop, and the vacuum that pots are degassed in.

use super::Resolver;
use crate::codes::code;
use crate::document::process::VacuumEntry;
use crate::document::written::{Altitude, Written};
use crate::json::path::Path::{self, At};
use crate::parameter::Parameter;
use crate::process::atmosphere::{GeometricAltitude, StationPressure};
use crate::process::chamber::{Air, Chamber, Pulled};
use crate::process::degas::Vacuum;
use crate::process::gauge::{AbsolutePressure, Dial, VacuumReading};
use crate::quantity::{Pressure, Ratio};

impl Resolver {
    /// The pressure of the air: the barometer's, else the standard one at the altitude; `None` where
    /// neither is stated.
    pub(crate) fn air(
        &mut self,
        altitude: Option<&Altitude>,
        barometer: Option<&Written<Pressure>>,
    ) -> Option<StationPressure> {
        let altitude = altitude.and_then(|written| {
            let altitude = self.keep(&At("/altitude"), written.to(self.system))?;
            self.keep(&At("/altitude"), GeometricAltitude::new(altitude))
        });
        let path = &At("/station_pressure");
        match (barometer, altitude) {
            (Some(written), Some(altitude)) => {
                let pressure = self.keep(path, written.to(self.system))?;
                self.keep(path, StationPressure::measured_at(pressure, altitude))
            }
            (Some(written), None) => {
                let pressure = self.keep(path, written.to(self.system))?;
                self.keep(path, StationPressure::measured(pressure))
            }
            (None, altitude) => altitude.map(StationPressure::standard),
        }
    }

    /// The vacuum at `at`, which must be possible where the air has `local`.
    pub(crate) fn chamber(
        &mut self,
        at: &Path<'_>,
        entry: &VacuumEntry,
        local: Option<StationPressure>,
    ) -> Option<Chamber> {
        let (field, pulled) = match (&entry.gauge, &entry.absolute) {
            (Some(gauge), None) => ("gauge", self.gauge(at, gauge, entry)),
            (None, Some(absolute)) => {
                let path = at.key("absolute");
                let pressure = self.positive(&path, absolute);
                let absolute = pressure.and_then(|p| self.keep(&path, AbsolutePressure::new(p)));
                ("absolute", absolute.map(Pulled::Absolute))
            }
            _ => {
                self.fault(
                    code!("gauge-or-absolute"),
                    at,
                    &"The vacuum must be stated in one way.",
                    &"Write \"gauge\": \"27 inHg\" as the gauge shows it, or \"absolute\": \"10 kPa\" for what is left in the chamber.",
                );
                return None;
            }
        };
        if let (Some(_), Some(_)) = (&entry.absolute, &entry.dial_tolerance) {
            self.fault(
                code!("tolerance-without-gauge"),
                &at.key("dial_tolerance"),
                &"The tolerance is that of a vacuum gauge, and an absolute pressure is given.",
                &"Leave it out, or give what the vacuum gauge shows.",
            );
        }
        let air = self.entrained(at, entry)?;
        let chamber = Chamber { pulled: pulled?, air };
        if let Some(local) = local {
            let pressure = self.keep(&at.key(field), chamber.pressure(local))?;
            let vacuum = Vacuum::new(local, pressure.absolute, Pressure::default());
            let vacuum = self.keep(&at.key(field), vacuum)?;
            let field = if entry.rise.is_some() { "rise" } else { "entrained" };
            self.keep(&at.key(field), chamber.entrained(vacuum))?;
        }
        Some(chamber)
    }

    fn gauge(
        &mut self,
        at: &Path<'_>,
        gauge: &Written<Pressure>,
        entry: &VacuumEntry,
    ) -> Option<Pulled> {
        let path = at.key("gauge");
        let reading = self.positive(&path, gauge);
        let reading = reading.and_then(|reading| self.keep(&path, VacuumReading::new(reading)));
        let dial = match &entry.dial_tolerance {
            None => Some(Dial::default()),
            Some(written) => {
                let path = at.key("dial_tolerance");
                let tolerance = self.keep(&path, written.to(self.system));
                tolerance.and_then(|tolerance| self.keep(&path, Dial::within(tolerance)))
            }
        };
        Some(Pulled::Gauge { reading: reading?, dial: dial? })
    }

    /// The air in a pot, where it is stated; the outer `None` where it is stated wrongly.
    #[allow(clippy::option_option)] // absent and wrong are two things
    fn entrained(&mut self, at: &Path<'_>, entry: &VacuumEntry) -> Option<Option<Air>> {
        match (entry.rise, entry.entrained) {
            (None, None) => Some(None),
            (Some(rise), None) => {
                let rise = self.keep(&at.key("rise"), Parameter::Rise.check_si(rise))?;
                Some(Some(Air::Rise(rise)))
            }
            (None, Some(share)) => {
                let share = share.share();
                self.check_below_one(&at.key("entrained"), Some(share));
                (share < 1.0).then(|| Some(Air::Share(Ratio::from(share))))
            }
            (Some(_), Some(_)) => {
                self.fault(
                    code!("rise-and-entrained"),
                    at,
                    &"The air in a pot is stated twice.",
                    &"Keep \"rise\", which was seen, and leave \"entrained\" out.",
                );
                None
            }
        }
    }
}
