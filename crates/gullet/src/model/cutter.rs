//! Milling cutters.

use super::{Check, HUGE};
use crate::error::Problem;
use crate::quantity::{self, Angle, Kind, Length, Pressure, RotationalSpeed, UnitSystem, si};
use crate::table::ToolMaterial;

/// Modulus of elasticity of steel, high speed steel too, in Pa (handbook-typical, from memory).
pub(crate) const STEEL_MODULUS: f64 = 206e9;

/// Modulus of elasticity of solid carbide, in Pa (handbook-typical, from memory).
pub(crate) const CARBIDE_MODULUS: f64 = 600e9;

/// Shape of the cutting end.
#[derive(Debug, Clone, Copy, PartialEq)]
pub enum CutterForm {
    /// Square-ended end mill.
    Square,
    /// End mill with a corner radius.
    CornerRadius(Length),
    /// Ball-nose end mill.
    BallNose,
    /// Face mill with its tool cutting-edge angle kappa_r.
    FaceMill(Angle),
}

/// A milling cutter as it sits in the holder.
#[derive(Debug, Clone, PartialEq)]
pub struct Cutter {
    /// What the shop calls it.
    pub name: String,
    /// Shape of the cutting end.
    pub form: CutterForm,
    /// What the edges are made of.
    pub material: ToolMaterial,
    /// Cutting diameter D.
    pub diameter: Length,
    /// Number of teeth z.
    pub teeth: u32,
    /// Length of the flutes, along the axis from the tip; of a face mill the height of its edges.
    pub flute_length: Length,
    /// Diameter of the shank in the holder; of a face mill that of its arbor.
    pub shank_diameter: Length,
    /// Distance from the tip to the holder.
    pub stick_out: Length,
    /// Helix angle of the flutes.
    pub helix_angle: Angle,
    /// Rake angle, kept for the record: no table here says which rake its forces belong to.
    pub rake_angle: Option<Angle>,
    /// Whether the cutter can be fed straight down.
    pub centre_cutting: bool,
    /// Highest speed marked on the cutter or its holder.
    pub maximum_speed: Option<RotationalSpeed>,
}

impl Cutter {
    /// Modulus of elasticity of the body: 206 GPa for high speed steel and for the steel body of a
    /// face mill, 600 GPa for solid carbide (handbook-typical values, from memory).
    pub fn modulus(&self) -> Pressure {
        si(match (self.form, self.material) {
            (CutterForm::FaceMill(_), _) => STEEL_MODULUS,
            (_, ToolMaterial::UncoatedCarbide | ToolMaterial::CoatedCarbide) => CARBIDE_MODULUS,
            _ => STEEL_MODULUS,
        })
    }

    /// Cutting-edge angle: that of a face mill, 90 deg of every end mill.
    pub fn cutting_edge_angle(&self) -> Angle {
        match self.form {
            CutterForm::FaceMill(angle) => angle,
            _ => si(core::f64::consts::FRAC_PI_2),
        }
    }

    /// Corner radius: half the diameter of a ball nose, zero of a square end or a face mill.
    pub fn corner_radius(&self) -> Length {
        match self.form {
            CutterForm::CornerRadius(radius) => radius,
            CutterForm::BallNose => self.diameter / 2.0,
            _ => si(0.0),
        }
    }

    /// Every problem of the fields; empty where the cutter can be computed with.
    pub fn problems(&self) -> Vec<Problem> {
        self.problems_in(UnitSystem::Metric)
    }

    /// As [`Self::problems`], with the numbers in a shop's units.
    pub fn problems_in(&self, units: UnitSystem) -> Vec<Problem> {
        let mut check = Check::new(units);
        let d = self.diameter.value;
        let length = Kind::Length;
        let right_angle = core::f64::consts::FRAC_PI_2;
        check.range(
            "diameter",
            length,
            d,
            0.0,
            false,
            1.0,
            "give the cutting diameter",
        );
        check.range(
            "teeth",
            Kind::Count,
            f64::from(self.teeth),
            1.0,
            true,
            200.0,
            "give the number of teeth",
        );
        check.range(
            "flute_length",
            length,
            self.flute_length.value,
            0.0,
            false,
            HUGE,
            "measure the flutes from the tip",
        );
        check.range(
            "shank_diameter",
            length,
            self.shank_diameter.value,
            0.0,
            false,
            HUGE,
            "measure the shank",
        );
        check.range(
            "stick_out",
            length,
            self.stick_out.value,
            0.0,
            false,
            HUGE,
            "measure from the tip to the holder",
        );
        check.range(
            "helix_angle",
            Kind::Angle,
            self.helix_angle.value,
            0.0,
            true,
            80f64.to_radians(),
            "give 30 deg where nothing is known; 0 deg is a straight flute",
        );
        if let Some(angle) = self.rake_angle {
            check.range(
                "rake_angle",
                Kind::Angle,
                angle.value,
                -45f64.to_radians(),
                true,
                45f64.to_radians(),
                "leave it out where it is not known",
            );
        }
        if let Some(speed) = self.maximum_speed {
            check.range(
                "maximum_speed",
                Kind::RotationalSpeed,
                speed.value,
                0.0,
                false,
                1e5,
                "read it off the cutter or its holder",
            );
        }
        match self.form {
            CutterForm::CornerRadius(radius) => check.range(
                "corner_radius",
                length,
                radius.value,
                0.0,
                true,
                d / 2.0,
                "a radius of half the diameter is a ball nose",
            ),
            CutterForm::FaceMill(angle) => check.range(
                "cutting_edge_angle",
                Kind::Angle,
                angle.value,
                0.0,
                false,
                right_angle,
                "kappa_r is 90 deg less the lead angle",
            ),
            CutterForm::Square | CutterForm::BallNose => {}
        }
        let show = |x: Length| quantity::format(length, x.value, units);
        check.agree(
            self.flute_length.value <= self.stick_out.value * (1.0 + 1e-12),
            "stick_out",
            show(self.stick_out),
            format!("at least flute_length = {}", show(self.flute_length)),
            "flutes must not be gripped in the holder: give the longer stick-out or the shorter flutes",
        );
        check.finish()
    }
}
