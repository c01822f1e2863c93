//! Units, amounts and doses.

use super::if_given;
use crate::material::{Drop, Kind, Material};
use crate::parameter::{Check, Parameter, PlainUnit};
use crate::quantity::{Amount, Conversion, Mass, MassDensity, Measurable, Measured, System, Unit};
use crate::table::refusal::Misread;
use crate::table::{Refusal, calculation};

calculation! {
    /// Converts an amount as a person writes it, such as `1 1/4 cup` or `330 °F`, exactly, and rounds once.
    ///
    /// A text that can be read two ways (`6 oz`, `1,25 cup`) is refused with both readings in the message.
    CONVERT = "convert": Convert<'a> -> ConvertResult
    takes {
        amount: &'a str = Amount,
        to: &'a str = To,
        measures: Option<System> = Measures,
    }
    gives {
        /// The number, in the unit of `to`.
        value: f64 = "value" Any,
    }
    request "convert"
    example Convert { amount: "1 1/4 cup", to: "mL", measures: None } => ConvertResult { value: 295.735_295_625 };
}

impl Convert<'_> {
    /// Calculates.
    ///
    /// # Errors
    /// A text that is not an amount or a unit, can be read as several, or measures something else.
    pub fn calculate(&self) -> Result<ConvertResult, Refusal> {
        let system = self.measures.unwrap_or(System::UsCustomary);
        let amount = Amount::parse(self.amount).map_err(Misread::of(Parameter::Amount))?;
        let to = Unit::parse(self.to).map_err(Misread::of(Parameter::To))?;
        let at = blamed(Parameter::Amount, amount.unit(), system);
        let value = amount.in_unit(to, system).map_err(Misread::of(at))?;
        Ok(ConvertResult { value: value.value().to_f64() })
    }
}

/// Which of two units that do not convert is to blame: `from`, where the system of measures does not have it.
fn blamed(from: Parameter, unit: Unit, system: System) -> Parameter {
    if unit.factor(system).is_err() { from } else { Parameter::To }
}

calculation! {
    /// Converts a number of one unit into another.
    ///
    /// Units are known by trade symbol and by UCUM code: `cup`, `[tsp_us]`, `g/mL`. Laws between units hold on bits: 48 tsp
    /// are 1 cup.
    CONVERT_NUMBER = "convert_number": ConvertNumber<'a> -> ConvertNumberResult
    takes {
        value: f64 = Value,
        unit: &'a str = Unit,
        to: &'a str = To,
        measures: Option<System> = Measures,
    }
    gives {
        /// The number, in the unit of `to`.
        value: f64 = "value" Any,
    }
    example ConvertNumber { value: 48.0, unit: "tsp", to: "cup", measures: None }
        => ConvertNumberResult { value: 1.0 };
}

impl ConvertNumber<'_> {
    /// Calculates.
    ///
    /// # Errors
    /// A text that is not a unit, or a unit that measures something else; a number below 0 or absolute zero.
    pub fn calculate(&self) -> Result<ConvertNumberResult, Refusal> {
        let value = Parameter::Value.check_si(self.value)?;
        let system = self.measures.unwrap_or(System::UsCustomary);
        let unit = Unit::parse(self.unit).map_err(Misread::of(Parameter::Unit))?;
        let to = Unit::parse(self.to).map_err(Misread::of(Parameter::To))?;
        let at = blamed(Parameter::Unit, unit, system);
        let way = Conversion::between(unit, to, system).map_err(Misread::of(at))?;
        let value = way.convert(value, unit).map_err(Misread::of(Parameter::Value))?;
        Ok(ConvertNumberResult { value })
    }
}

calculation! {
    /// Mass of an amount of a material, as a person writes it: `1/4 tsp`, `40 drops`, `12.5 g`.
    ///
    /// A liquid by its density, a powder by its bulk density, drops by the material's own drop; without one a drop is
    /// 1/20 mL (pharmacy practice).
    DOSE_MASS = "dose_mass": DoseMass<'a> -> DoseMassResult
    takes {
        amount: &'a str = Amount,
        kind: Kind = Kind,
        material_density_g_per_ml: Option<f64> = MaterialDensity,
        as_scooped_g_per_ml: Option<f64> = AsScooped,
        drop_mass_g: Option<f64> = DropMass,
        measures: Option<System> = Measures,
    }
    gives {
        /// The mass.
        mass_g: f64 = "mass" Gram,
    }
    request "dose"
    example DoseMass {
        amount: "50 drops",
        kind: Kind::Colorant,
        material_density_g_per_ml: Some(1.05),
        as_scooped_g_per_ml: None,
        drop_mass_g: Some(0.044),
        measures: None,
    } => DoseMassResult { mass_g: 2.2 };
}

impl DoseMass<'_> {
    /// Calculates.
    ///
    /// # Errors
    /// Numbers out of their ranges; a text that is not an amount; the number that the amount takes is not known.
    pub fn calculate(&self) -> Result<DoseMassResult, Refusal> {
        let density: Option<MassDensity> =
            if_given(Parameter::MaterialDensity, self.material_density_g_per_ml);
        let scooped: Option<MassDensity> = if_given(Parameter::AsScooped, self.as_scooped_g_per_ml);
        let drop: Option<Mass> = if_given(Parameter::DropMass, self.drop_mass_g);
        let mut check = Check::new();
        check
            .option(Parameter::MaterialDensity, density.map(|density| density.si()))
            .option(Parameter::AsScooped, scooped.map(|density| density.si()))
            .option(Parameter::DropMass, drop.map(|drop| drop.si()));
        check.finish()?;
        let mut material = Material::new("material", self.kind);
        material.density = density.map(Measured::exact);
        material.as_scooped = scooped.map(Measured::exact);
        material.drop = drop.map(|drop| Drop::Mass(Measured::exact(drop)));
        let amount = Amount::parse(self.amount).map_err(Misread::of(Parameter::Amount))?;
        let system = self.measures.unwrap_or(System::UsCustomary);
        let mass = material.mass_of(&amount, system, "the mass of the amount")?;
        Ok(DoseMassResult { mass_g: PlainUnit::Gram.from_si(mass.si()) })
    }
}
