//! A lot on the card.

use crate::error::{Error, Result};
use crate::fibre;
use crate::job::{Ask, Job, Work};
use crate::mill;
use crate::number::Number;
use crate::quantity::print::of_kind;
use crate::quantity::{
    Count, Duration, Fraction, Frequency, Kind, Length, LinearDensity, Mass, MassRate, Speed,
};
use crate::worked::Worked;

/// A lot on the card: what to set and weigh, how long it takes, where each part of it goes.
pub(crate) static CARD_RUN: Job = Job {
    name: "card_run",
    module: module_path!(),
    title: "A lot on the card",
    summary: "A lot on the card: what to set and weigh, how long it takes, where each part of it goes.",
    details: "`droppings`, `strips`, `fly` and `burr` are shares of what goes through; `loss` is what is not \
        split so. Edge ends are put back on the feed, or as much of them as `put_back` says. With `regain` \
        and `fat` of the feed and of the slubbing the balance reads what is weighed; without them all is \
        clean dry fibre.",
    example: ">>> import hankwise as hw\n\
>>> card = hw.mill.card_run(lot=\"36 kg\", slubbing=\"200 tex\", ends=120, edge_ends=6, speed=\"12 m/min\",\n\
...                         droppings=\"2 %\", strips=\"1.5 %\", fly=\"0.5 %\", held_up=\"0.60 kg\",\n\
...                         drops=\"2 drops/min\", width=\"1.5 m\", regain=\"22 %\", fat=\"5 %\",\n\
...                         regain_out=\"16 %\", fat_out=\"5 %\")\n\
>>> card[\"weigh\"], card[\"time\"], card[\"slubbing_fibre\"]\n\
(<mass: 0.1653 kg>, <time: 2.415 h>, <mass: 33.89 kg>)",
    asks: &[
        Ask::need("lot", "m", "clean dry fibre of the lot", Kind::Mass, (0.5, 2000.0), "\"36 kg\""),
        Ask::need(
            "slubbing",
            "T",
            "slubbing count, as it leaves the card",
            Kind::LinearDensity,
            (50.0, 2000.0),
            "\"200 tex\"",
        ),
        Ask::need("ends", "N", "good ends", Kind::Count, (10.0, 200.0), "120"),
        Ask::need("speed", "v", "delivery", Kind::Speed, (5.0, 40.0), "\"12 m/min\""),
        Ask::may("edge_ends", "N_e", "edge ends, all together", Kind::Count, (0.0, 16.0)).or(0.0),
        Ask::may(
            "put_back",
            "r",
            "share of the edge ends that is put back on the feed",
            Kind::Fraction,
            (0.0, 1.0),
        )
        .or(1.0)
        .or_none(),
        waste("droppings", "w_d", "droppings under the card"),
        waste("strips", "w_s", "strips fettled from the clothing"),
        waste("fly", "w_f", "fly"),
        waste("burr", "w_b", "fibre thrown out with burr and seed"),
        waste("loss", "w_o", "loss that is not split by place"),
        Ask::may("held_up", "h", "clean dry fibre in the running card", Kind::Mass, (0.0, 10.0))
            .or(0.0),
        Ask::may(
            "within",
            "x",
            "how near to its count slubbing has to be",
            Kind::Fraction,
            (0.01, 0.2),
        )
        .or(0.05),
        Ask::may("drops", "f", "drops of the hopper", Kind::Frequency, (0.5, 6.0)),
        Ask::may("width", "b", "width of the web", Kind::Length, (0.2, 3.0)),
        state("regain", "R₁", "water on clean dry fibre, at the hopper", Kind::Regain),
        state("fat", "o₁", "grease and oil on clean dry fibre, at the hopper", Kind::Fraction),
        state("regain_out", "R₂", "water on clean dry fibre, in the slubbing", Kind::Regain),
        state(
            "fat_out",
            "o₂",
            "grease and oil on clean dry fibre, in the slubbing",
            Kind::Fraction,
        ),
    ],
    cautions: &["machines", "dust"],
    work,
};

const fn waste(name: &'static str, symbol: &'static str, words: &'static str) -> Ask {
    Ask::may(name, symbol, words, Kind::Fraction, (0.0, 0.1)).or(0.0)
}

const fn state(name: &'static str, symbol: &'static str, words: &'static str, kind: Kind) -> Ask {
    Ask::may(name, symbol, words, kind, (0.0, 0.35)).or(0.0)
}

/// Where waste falls: the ask, the name of its mass, what it is.
const PLACES: [(&str, &str, &str); 5] = [
    ("droppings", "droppings_mass", "droppings under the card"),
    ("strips", "strips_mass", "strips from the clothing"),
    ("fly", "fly_mass", "fly"),
    ("burr", "burr_mass", "fibre thrown out with burr"),
    ("loss", "loss_mass", "loss not split by place"),
];

/// What goes through the card in one pass, as shares of it.
struct Pass<'t> {
    /// Not good slubbing.
    loss: Fraction<Worked<'t>>,
    /// Put back on the feed.
    returned: Fraction<Worked<'t>>,
    /// Edge ends that are not.
    thrown: Fraction<Worked<'t>>,
    /// Lost for good, of the lot.
    lot: Fraction<Worked<'t>>,
    /// What goes through, that is put back counted again.
    through: Mass<Worked<'t>>,
}

fn work(job: &Work<'_, '_>) -> Result<()> {
    let (lot, held_up): (Mass<_>, Mass<_>) = (job.get("lot"), job.get("held_up"));
    // Named before the first table: told further down.
    let pass = pass(job)?;
    let delivery = rates(job, &pass);
    if held_up.value() > 0.0 {
        let within: Fraction<_> = job.get("within");
        let settle = mill::settling_time(held_up, delivery, within);
        job.name("settle", "wait after the start or a change of feed before weighing", settle);
        let light = mill::off_count_mass(held_up, within);
        job.name("light_at_start", "under its count while the card fills: put it back", light);
        let words = "in the card when the feed stops: light slubbing and strips";
        job.name("left_at_stop", words, mill::left_at_stop(held_up, within));
    }
    job.block("Where the lot goes, clean dry fibre");
    where_it_goes(job, &pass)?;
    let say = |mass: Mass<_>| job.say(mass.value(), Kind::Mass);
    job.note(format!(
        "kept in the card: {}; together the lot, {}; what is put back last stays for the next lot",
        say(held_up),
        say(lot)
    ));
    job.block("Of what goes through in one pass");
    for name in ["edge_share", "returned", "pass_loss", "through"] {
        job.show(name);
    }
    let lost = of_kind(pass.lot.value(), Kind::Fraction);
    job.note(format!("lost for good, of the lot, besides what the card keeps: {lost}"));
    Ok(())
}

/// Shares of a pass: waste by place, edges that are put back, edges that are not.
fn pass<'t>(job: &Work<'_, 't>) -> Result<Pass<'t>> {
    let share = |name: &str| job.get::<Fraction<_>>(name).v();
    let waste = PLACES[1..].iter().fold(share(PLACES[0].0), |sum, (name, ..)| sum + share(name));
    let all = "droppings, strips, fly, burr and loss together";
    Kind::Fraction.check(waste.value()).map_err(|e| e.at(all))?;
    let waste = Fraction::from(waste);
    let edges = mill::edge_share(job.get("ends"), job.get("edge_ends"));
    let edges = job.name("edge_share", "share of the web in the edge ends", edges);
    let loss = mill::pass_loss(waste, edges);
    let loss = job.name("pass_loss", "not good slubbing, of what goes through", loss);
    let of_pass = (1.0 - waste.v()) * edges.v();
    let returned = Fraction::from(of_pass * share("put_back"));
    let returned = job.name("returned", "put back on the feed, of what goes through", returned);
    let thrown = Fraction::from(of_pass * (1.0 - share("put_back")));
    let lot = mill::loss_with_return(Fraction::from(waste.v() + thrown.v()), returned);
    let lot = job.name("lot_share_lost", "lost for good, of the lot", lot);
    let lot_mass: Mass<_> = job.get("lot");
    let words = "clean dry fibre through the card, what is put back counted again";
    let through = Mass::from(lot_mass.v() / (1.0 - returned.v()));
    let through = job.name("through", words, through);
    Ok(Pass { loss, returned, thrown, lot, through })
}

/// Names the mass of every part of the lot.
fn where_it_goes<'t>(job: &Work<'_, 't>, pass: &Pass<'t>) -> Result<()> {
    let (lot, held_up): (Mass<_>, Mass<_>) = (job.get("lot"), job.get("held_up"));
    let out = mill::mass_after_loss(lot, pass.lot, held_up);
    if out.value() <= 0.0 {
        let (lost, kept) = (Fraction::base(pass.lot.value()), Mass::base(held_up.value()));
        let least = mill::mass_before_loss(Mass::base(0.0), lost, kept);
        return Err(Error::range(format!(
            "lot: {} is no more than the card keeps and loses, {}; make up a larger lot, or run it with \
             another",
            job.say(lot.value(), Kind::Mass),
            job.say(least.value(), Kind::Mass)
        )));
    }
    job.name("slubbing_fibre", "clean dry fibre in good slubbing", out);
    let part = |name, words, share: Fraction<Worked<'t>>| {
        if share.value() > 0.0 {
            job.name(name, words, Mass::from(pass.through.v() * share.v()));
        }
    };
    for (place, name, words) in PLACES {
        part(name, words, job.get(place));
    }
    part("edges_mass", "edge ends that are not put back", pass.thrown);
    Ok(())
}

/// What is fed, weighed and delivered, in which time; gives the delivery on clean dry fibre.
fn rates<'t>(job: &Work<'_, 't>, pass: &Pass<'t>) -> MassRate<Worked<'t>> {
    let none = Fraction::base(Number::constant(0.0));
    let fed = fibre::state_ratio(job.get("regain"), job.get("fat"), none);
    let made = fibre::state_ratio(job.get("regain_out"), job.get("fat_out"), none);
    let (ends, edge_ends): (Count<_>, Count<_>) = (job.get("ends"), job.get("edge_ends"));
    let (slubbing, speed): (LinearDensity<_>, Speed<_>) = (job.get("slubbing"), job.get("speed"));
    job.block("To set and to weigh");
    let dry = LinearDensity::from(slubbing.v() / made.v());
    let dry = job.name("slubbing_dry", "slubbing, on clean dry fibre", dry);
    let delivery = mill::card_output(ends, speed, dry);
    let delivery = job.name("delivery", "clean dry fibre delivered in good slubbing", delivery);
    let feed = mill::feed_rate(delivery, pass.loss, fed);
    let feed = job.name("feed", "feed, as weighed, what is put back included", feed);
    let one = Count::base(Number::constant(1.0));
    let end_rate = mill::card_output(one, speed, slubbing);
    job.name("end_rate", "each good end, as it leaves the card", end_rate);
    if let Some(drops) = job.may::<Frequency<_>>("drops") {
        job.name("weigh", "hopper weigh", mill::hopper_weigh(feed, drops));
        let period = Duration::from(1.0 / (drops.v() * 60.0));
        job.name("period", "from drop to drop", period);
    }
    if let Some(width) = job.may::<Length<_>>("width") {
        let all = Count::from(ends.v() + edge_ends.v());
        job.name("pitch", "width of a tape", mill::tape_pitch(width, all));
        let web = mill::web_mass_per_area(slubbing, all, width);
        job.name("web", "web, as it leaves the card", web);
    }
    job.block("Time");
    let fresh = MassRate::from(feed.v() / fed.v() * (1.0 - pass.returned.v()));
    let time: Duration<_> = mill::time_for_mass(job.get("lot"), fresh);
    job.name("time", "running time", time);
    delivery
}
