//! Spinning on the mule.

use super::{
    Bench, Draft, Kind, LOSS, Losses, PRACTICE, Question, Section, Sinks, Stage, Station, ask,
    beside, in_state, named,
};
use crate::error::Result;
use crate::number::Number;
use crate::plan::given::{Ask, Owned};
use crate::quantity::{Count, Fraction, Length, LinearDensity, Ratio, print};
use crate::{fibre, mill, yarn};

/// Spins the slubbing into singles.
#[derive(Clone, Debug)]
pub(in crate::plan) struct Mule {
    losses: Losses,
    spindles: Ask,
    travel: Ask,
    let_in: Ask,
    draft: Ask,
    delivered_per_tooth: Ask,
    delivery: Owned,
    turns_per_tooth: Ask,
    twist: Owned,
    slip: Ask,
    coiling: Ask,
    cycle: Ask,
    efficiency: Ask,
}

/// Regain at which fibres in the section are counted: conditioned wool (common practice).
const CONDITIONED: f64 = 0.16;

const SINKS: Sinks =
    Sinks { fibre: "slubbing and yarn waste", water: "air", fat: "air", vegetable: "fly" };

impl Stage for Mule {
    const NAME: &'static str = "mule";
    const SUMMARY: &'static str = "Spins the slubbing into singles: draft, twist, wheels.";
    const MAKES: &'static str = "singles";
    const CAUTIONS: &'static [&'static str] = &["mule", "wheels"];

    fn read(section: &Section<'_>, draft: &mut Draft) -> Result<Self> {
        let q = ask;
        let memory = "from memory";
        let spindles = q("spindles", "k", "spindles", Kind::Count, (20.0, 600.0, PRACTICE), "120");
        let travel = q(
            "travel",
            "S",
            "travel of the carriage",
            Kind::Length,
            (1.5, 2.3, PRACTICE),
            "\"1.830 m\"",
        );
        let let_in = q(
            "let_in",
            "g",
            "let-in of the carriage",
            Kind::Length,
            (0.0, 0.15, PRACTICE),
            "\"0.060 m\"",
        );
        let draft_wanted =
            q("draft", "D", "draft wanted", Kind::Ratio, (1.2, 1.5, PRACTICE), "1.40");
        let per_tooth = q(
            "delivered_per_tooth",
            "p",
            "slubbing delivered for each tooth of the delivery wheel",
            Kind::Length,
            (0.005, 0.2, PRACTICE),
            "\"0.038 m\"",
        );
        let turns = q(
            "turns_per_tooth",
            "p_t",
            "spindle turns in a draw for each tooth of the twist wheel",
            Kind::Ratio,
            (0.5, 50.0, PRACTICE),
            "6.0",
        );
        let slip =
            q("slip", "x", "slip of the band", Kind::Fraction, (0.0, 0.08, PRACTICE), "\"3 %\"");
        let coiling = q(
            "coiling",
            "b",
            "turns spent in coiling to the spindle tip",
            Kind::Count,
            (0.0, 15.0, PRACTICE),
            "8",
        );
        let cycle =
            q("cycle", "τ", "time of a draw", Kind::Duration, (0.005, 0.012, PRACTICE), "\"24 s\"");
        let efficiency =
            q("efficiency", "η", "efficiency", Kind::Fraction, (0.75, 0.9, memory), "\"85 %\"");
        let loss = Question { usual: (0.01, 0.05, memory), ..LOSS };
        Ok(Mule {
            losses: Losses::read(section, draft, &loss, &SINKS)?,
            spindles: section.ask(draft, &spindles)?,
            travel: section.ask(draft, &travel)?,
            let_in: section.ask(draft, &let_in.or(0.0))?,
            draft: section.ask(draft, &draft_wanted)?,
            delivered_per_tooth: section.ask(draft, &per_tooth)?,
            delivery: section.owned(
                draft,
                "delivery_wheels",
                "delivery_wheel",
                Kind::Count,
                "[32, 34, 36]",
            )?,
            turns_per_tooth: section.ask(draft, &turns)?,
            twist: section.owned(
                draft,
                "twist_wheels",
                "twist_wheel",
                Kind::Count,
                "[60, 64, 68]",
            )?,
            slip: section.ask(draft, &slip.or(0.0))?,
            coiling: section.ask(draft, &coiling.or(0.0))?,
            cycle: section.ask(draft, &cycle)?,
            efficiency: section.ask(draft, &efficiency.positive())?,
        })
    }

    fn losses(&self) -> Option<&Losses> {
        Some(&self.losses)
    }

    fn count_in<N: Number>(
        &self,
        station: &Station<'_, '_, N>,
        out: LinearDensity<N>,
        bench: &mut Bench<N>,
    ) -> LinearDensity<N> {
        let values = station.values;
        let travel: Length<N> = values.get(self.travel);
        let wound = mill::wound_length(travel, values.get(self.let_in));
        let wound = named(Self::NAME, "wound", "yarn wound in a draw", wound);
        let per_tooth: Length<N> = values.get(self.delivered_per_tooth);
        let wanted = mill::delivery_wheel(travel, values.get(self.draft), per_tooth);
        let wanted =
            named(Self::NAME, "delivery_wheel_wanted", "delivery wheel for the draft", wanted);
        let wheel = values.wheel(&self.delivery, wanted);
        let gives = |z: f64| {
            format!(
                "draft {}",
                print::figure(
                    mill::mule_draft(
                        Length::base(travel.value()),
                        mill::delivered_length(Length::base(per_tooth.value()), Count::base(z)),
                    )
                    .value()
                )
            )
        };
        let note = beside(&self.delivery, wanted.value(), |z| z, gives);
        bench.set(Self::NAME, "delivery_wheel", "delivery wheel, teeth", wheel, note);
        let delivered = mill::delivered_length(per_tooth, wheel);
        let delivered =
            bench.expect(Self::NAME, "delivered", "slubbing delivered in a draw", delivered, "");
        let draft = mill::mule_draft(travel, delivered);
        bench.expect(Self::NAME, "draft_set", "draft", draft, "travel over delivery");
        bench.draw = Some((wound, delivered));
        let slubbing = mill::slubbing_for_single(out, wound, delivered);
        named(Self::NAME, "slubbing_dry", "slubbing wanted, on clean dry fibre", slubbing)
    }

    fn set<N: Number>(&self, station: &Station<'_, '_, N>, bench: &mut Bench<N>) {
        let values = station.values;
        let Some((wound, _)) = bench.draw else { return };
        let dry = named(Self::NAME, "single_dry", "single, on clean dry fibre", station.count_out);
        let state = station.state_out;
        let single = in_state(dry, state);
        let single = bench.expect(Self::NAME, "count", "single count", single, "as spun, in oil");
        let entering = in_state(station.count_in, state);
        bench.expect(
            Self::NAME,
            "slubbing",
            "slubbing count",
            entering,
            "at the regain of the spinning room",
        );

        let wanted = yarn::twist_for_factor(values.get(station.yarn.twist_factor), single);
        let wanted = named(Self::NAME, "twist_wanted", "twist for the factor wanted", wanted);
        let (slip, coiling): (Fraction<N>, Count<N>) =
            (values.get(self.slip), values.get(self.coiling));
        let turns = mill::turns_per_draw(wanted, wound, coiling, slip);
        let turns =
            named(Self::NAME, "turns_wanted", "spindle turns in a draw for that twist", turns);
        let per_tooth: Ratio<N> = values.get(self.turns_per_tooth);
        let wheel_wanted = mill::twist_wheel(turns, per_tooth);
        let wheel_wanted =
            named(Self::NAME, "twist_wheel_wanted", "twist wheel for those turns", wheel_wanted);
        let wheel = values.wheel(&self.twist, wheel_wanted);
        let gives = |z: f64| {
            let plain = |q: f64| Count::base(q);
            let twist = mill::mule_twist(
                plain(z * per_tooth.value()),
                Fraction::base(slip.value()),
                plain(coiling.value()),
                Length::base(wound.value()),
            );
            bench.say.figure(twist.value(), Kind::Twist)
        };
        let note = beside(&self.twist, wheel_wanted.value(), |z| z, gives);
        let wheel = bench.set(Self::NAME, "twist_wheel", "twist wheel, teeth", wheel, note);
        let turns = Count::from(wheel.v() * per_tooth.v());
        let turns = named(Self::NAME, "turns", "spindle turns in a draw", turns);
        let twist = mill::mule_twist(turns, slip, coiling, wound);
        let note = format!("wanted {}", bench.say.figure(wanted.value(), Kind::Twist));
        let twist = bench.set(Self::NAME, "twist", "twist in the singles", twist, note);
        bench.single_twist = Some(twist);
        let factor = yarn::twist_factor(twist, single);
        bench.expect(Self::NAME, "twist_factor", "twist factor", factor, "on the count as spun");

        let fine = fibre::wool_fibre_count(values.get(station.lot.diameter));
        let clean = LinearDensity::from(dry.v() * (1.0 + CONDITIONED));
        let clean =
            named(Self::NAME, "single_clean", "single, clean and conditioned (16 % regain)", clean);
        let fibres = fibre::fibres_in_section(clean, fine, values.get(station.lot.variation));
        bench.expect(
            Self::NAME,
            "fibres",
            "fibres in the section",
            fibres,
            "about 100 to 120 at least for woollen (from memory)",
        );

        let length = yarn::length_of_mass(station.after.fibre, dry);
        let length =
            bench.expect(Self::NAME, "length", "yarn to spin", length, "all spindles together");
        let spindles: Count<N> = values.get(self.spindles);
        let draws = mill::draws(length, spindles, wound);
        bench.expect(Self::NAME, "draws", "draws", draws, "");
        let rate = mill::mule_output(
            spindles,
            wound,
            values.get(self.cycle),
            single,
            values.get(self.efficiency),
        );
        let rate = bench.expect(Self::NAME, "output", "output", rate, "as spun, in oil");
        let mass = fibre::mass_in_state(station.after.fibre, state);
        let mass = named(Self::NAME, "mass", "singles as spun", mass);
        bench.expect(Self::NAME, "time", "running time", mill::time_for_mass(mass, rate), "");
    }
}
