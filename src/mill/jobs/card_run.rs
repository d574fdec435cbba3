//! A lot on the card.

use crate::error::{Error, Result};
use crate::fibre;
use crate::job::{Asked, Job, must};
use crate::mill;
use crate::number::Number;
use crate::quantity::print::of_kind;
use crate::quantity::{
    Count, Duration, Fraction, Frequency, Kind, Length, LinearDensity, Mass, MassRate, Speed,
};
use crate::table::Report;
use crate::worked::Worked;

/// A lot on the card: what to set and weigh, how long it takes, where each part of it goes.
pub static CARD_RUN: Job = Job {
    name: "card_run",
    module: module_path!(),
    summary: "A lot on the card: what to set and weigh, how long it takes, where each part of it goes.",
    details: "`droppings`, `strips`, `fly` and `burr` are shares of what goes through; `loss` is what is not split \
so. Edge ends are put back on the feed, or as much of them as `put_back` says. With `regain` and `fat` of \
the feed and of the slubbing the balance reads what is weighed; without them all is clean dry fibre.\n\n\
>>> import hankwise as hw\n\
>>> card = hw.mill.card_run(lot=\"36 kg\", slubbing=\"200 tex\", ends=120, edge_ends=6, speed=\"12 m/min\",\n\
...                         droppings=\"2 %\", strips=\"1.5 %\", fly=\"0.5 %\", held_up=\"0.60 kg\",\n\
...                         drops=\"2 drops/min\", width=\"1.5 m\", regain=\"22 %\", fat=\"5 %\",\n\
...                         regain_out=\"16 %\", fat_out=\"5 %\")\n\
>>> card[\"weigh\"], card[\"time\"], card[\"slubbing_fibre\"]\n\
(<mass: 0.1653 kg>, <time: 2.415 h>, <mass: 33.89 kg>)",
    asks: &[
        must("lot", "m", "clean dry fibre of the lot", Kind::Mass, (0.5, 2000.0)),
        must(
            "slubbing",
            "T",
            "slubbing count, as it leaves the card",
            Kind::LinearDensity,
            (50.0, 2000.0),
        ),
        must("ends", "N", "good ends", Kind::Count, (10.0, 200.0)),
        must("speed", "v", "delivery", Kind::Speed, (5.0, 40.0)),
        must("edge_ends", "N_e", "edge ends, all together", Kind::Count, (0.0, 16.0)).or("0"),
        must(
            "put_back",
            "r",
            "share of the edge ends that is put back on the feed",
            Kind::Fraction,
            (0.0, 1.0),
        )
        .or("100 %"),
        must("droppings", "w_d", "droppings under the card", Kind::Fraction, (0.0, 0.06)).or("0 %"),
        must("strips", "w_s", "strips fettled from the clothing", Kind::Fraction, (0.0, 0.06))
            .or("0 %"),
        must("fly", "w_f", "fly", Kind::Fraction, (0.0, 0.03)).or("0 %"),
        must("burr", "w_b", "fibre thrown out with burr and seed", Kind::Fraction, (0.0, 0.05))
            .or("0 %"),
        must("loss", "w", "loss that is not split by place", Kind::Fraction, (0.0, 0.1)).or("0 %"),
        must("held_up", "h", "clean dry fibre in the running card", Kind::Mass, (0.0, 10.0))
            .or("0 kg"),
        must(
            "within",
            "x",
            "how near to its count slubbing has to be",
            Kind::Fraction,
            (0.01, 0.2),
        )
        .or("5 %"),
        must("drops", "f", "drops of the hopper", Kind::Frequency, (0.5, 6.0)).may(),
        must("width", "b", "width of the web", Kind::Length, (0.2, 3.0)).may(),
        must("regain", "R₁", "water on clean dry fibre, at the hopper", Kind::Regain, (0.0, 0.35))
            .or("0 %"),
        must(
            "fat",
            "o₁",
            "grease and oil on clean dry fibre, at the hopper",
            Kind::Fraction,
            (0.0, 0.15),
        )
        .or("0 %"),
        must(
            "regain_out",
            "R₂",
            "water on clean dry fibre, in the slubbing",
            Kind::Regain,
            (0.0, 0.35),
        )
        .or("0 %"),
        must(
            "fat_out",
            "o₂",
            "grease and oil on clean dry fibre, in the slubbing",
            Kind::Fraction,
            (0.0, 0.15),
        )
        .or("0 %"),
    ],
    cautions: &["machines", "dust"],
    work,
};

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
}

fn work(asked: &Asked<'_, '_>) -> Result<Report> {
    let (lot, held_up): (Mass<_>, Mass<_>) = (asked.get("lot"), asked.get("held_up"));
    let pass = pass(asked)?;
    let places = where_it_goes(asked, &pass)?;
    let delivery = rates(asked, &pass);
    if held_up.value() > 0.0 {
        let within: Fraction<_> = asked.get("within");
        let settle = mill::settling_time(held_up, delivery, within);
        asked.figure("settle", "wait after the start or a change of feed before weighing", settle);
        let light = mill::off_count_at_start(held_up, within);
        asked.figure("light_at_start", "under its count while the card fills: put it back", light);
        let words = "in the card when the feed stops: light slubbing and strips";
        asked.figure("left_at_stop", words, mill::left_at_stop(held_up, within));
    }
    let names = ["edge_share", "returned", "pass_loss", "through"];
    let mut shares = asked.table("of what goes through in one pass", &names);
    let lost = of_kind(pass.lot.value(), Kind::Fraction);
    shares.foot.push(format!("lost for good, of the lot, besides what the card keeps: {lost}"));
    let mut account = asked.table("where the lot goes, clean dry fibre", &places);
    let kept = asked.say(Kind::Mass, held_up.value());
    account.rows.push(vec!["kept in the card".to_owned(), kept, "held_up".to_owned()]);
    let sum = asked.say(Kind::Mass, lot.value());
    account
        .foot
        .push(format!("together the lot, {sum}; what is put back last stays for the next lot"));
    let set = ["weigh", "period", "feed", "delivery", "end_rate", "pitch", "web"];
    Ok(Report {
        title: "A lot on the card".to_owned(),
        blocks: vec![
            asked.table("to set and to weigh", &set),
            asked.table("time", &["time", "settle", "light_at_start", "left_at_stop"]),
            shares,
            account,
        ],
    })
}

/// Shares of a pass: waste by place, edges that are put back, edges that are not.
fn pass<'t>(asked: &Asked<'_, 't>) -> Result<Pass<'t>> {
    let share = |name: &str| asked.get::<Fraction<_>>(name).v();
    let waste = PLACES[1..].iter().fold(share(PLACES[0].0), |sum, (name, ..)| sum + share(name));
    let all = "droppings, strips, fly, burr and loss together";
    Kind::Fraction.check(waste.value()).map_err(|e| e.at(all))?;
    let waste = Fraction::from(waste);
    let edges = mill::edge_share(asked.get("ends"), asked.get("edge_ends"));
    let edges = asked.figure("edge_share", "share of the web in the edge ends", edges);
    let loss = mill::pass_loss(waste, edges);
    let loss = asked.figure("pass_loss", "not good slubbing, of what goes through", loss);
    let of_pass = (1.0 - waste.v()) * edges.v();
    let returned = Fraction::from(of_pass * share("put_back"));
    let returned = asked.figure("returned", "put back on the feed, of what goes through", returned);
    let thrown = Fraction::from(of_pass * (1.0 - share("put_back")));
    let lot = mill::loss_with_return(Fraction::from(waste.v() + thrown.v()), returned);
    let lot = asked.figure("lot_share_lost", "lost for good, of the lot", lot);
    Ok(Pass { loss, returned, thrown, lot })
}

/// Names the mass of every part of the lot; gives the names.
fn where_it_goes<'t>(asked: &Asked<'_, 't>, pass: &Pass<'t>) -> Result<Vec<&'static str>> {
    let (lot, held_up): (Mass<_>, Mass<_>) = (asked.get("lot"), asked.get("held_up"));
    let out = mill::after_loss(lot, pass.lot, held_up);
    if out.value() <= 0.0 {
        let (lost, kept) = (Fraction::base(pass.lot.value()), Mass::base(held_up.value()));
        let least = mill::before_loss(Mass::base(0.0), lost, kept);
        return Err(Error::range(format!(
            "lot: {} is no more than the card keeps and loses, {}; make up a larger lot, or run it with \
             another",
            asked.say(Kind::Mass, lot.value()),
            asked.say(Kind::Mass, least.value())
        )));
    }
    asked.figure("slubbing_fibre", "clean dry fibre in good slubbing", out);
    let through = Mass::from(lot.v() / (1.0 - pass.returned.v()));
    let words = "clean dry fibre through the card, what is put back counted again";
    let through = asked.figure("through", words, through);
    let mut names = vec!["slubbing_fibre"];
    let mut part = |name, words, share: Fraction<Worked<'t>>| {
        if share.value() > 0.0 {
            asked.figure(name, words, Mass::from(through.v() * share.v()));
            names.push(name);
        }
    };
    for (place, name, words) in PLACES {
        part(name, words, asked.get(place));
    }
    part("edges_mass", "edge ends that are not put back", pass.thrown);
    Ok(names)
}

/// What is fed, weighed and delivered, in which time; gives the delivery on clean dry fibre.
fn rates<'t>(asked: &Asked<'_, 't>, pass: &Pass<'t>) -> MassRate<Worked<'t>> {
    let none = Fraction::base(Number::constant(0.0));
    let fed = fibre::state_ratio(asked.get("regain"), asked.get("fat"), none);
    let made = fibre::state_ratio(asked.get("regain_out"), asked.get("fat_out"), none);
    let (ends, edge_ends): (Count<_>, Count<_>) = (asked.get("ends"), asked.get("edge_ends"));
    let (slubbing, speed): (LinearDensity<_>, Speed<_>) =
        (asked.get("slubbing"), asked.get("speed"));
    let dry = LinearDensity::from(slubbing.v() / made.v());
    let dry = asked.figure("slubbing_dry", "slubbing, on clean dry fibre", dry);
    let delivery = mill::card_rate(ends, speed, dry);
    let delivery = asked.figure("delivery", "clean dry fibre delivered in good slubbing", delivery);
    let feed = mill::feed_rate(delivery, pass.loss, fed);
    let feed = asked.figure("feed", "feed, as weighed, what is put back included", feed);
    let one = Count::base(Number::constant(1.0));
    let end_rate = mill::card_rate(one, speed, slubbing);
    asked.figure("end_rate", "each good end, as it leaves the card", end_rate);
    let fresh = MassRate::from(feed.v() / fed.v() * (1.0 - pass.returned.v()));
    let time: Duration<_> = mill::time_for_mass(asked.get("lot"), fresh);
    asked.figure("time", "running time", time);
    if let Some(drops) = asked.may::<Frequency<_>>("drops") {
        asked.figure("weigh", "hopper weigh", mill::hopper_weigh(feed, drops));
        let period = Duration::from(1.0 / (drops.v() * 60.0));
        asked.figure("period", "from drop to drop", period);
    }
    if let Some(width) = asked.may::<Length<_>>("width") {
        let all = Count::from(ends.v() + edge_ends.v());
        asked.figure("pitch", "width of a tape", mill::tape_pitch(width, all));
        let web = mill::web_mass_per_area(slubbing, all, width);
        asked.figure("web", "web, as it leaves the card", web);
    }
    delivery
}
