use hankwise::plan::Plan;
#[test]
fn runs() {
    let plan = Plan::load("examples/first-lot.toml".as_ref()).unwrap();
    let t = std::time::Instant::now();
    let r = plan.run(100_000, 1, 2, &mut |_| true).unwrap();
    println!("{:?}", t.elapsed());
    for s in &r.stages {
        println!("{} {:.2} {:.2} {:?}", s.name, s.stock.fibre.0, s.stock.total().0, s.band);
    }
    for g in &r.goods {
        println!("{g:?}");
    }
    println!("{:?}", r.margin);
    for s in &r.settings {
        println!("{:28} {:12.5} {} | {} | {}", s.key, s.value, s.kind.base(), s.words, s.note);
    }
    for d in &r.drivers {
        println!("{d:?}");
    }
    let mut tot = [0.0; 5];
    for a in &r.account {
        println!("{} -> {} {} {:.4?}", a.stage, a.to, a.added, a.stock.parts());
        for (t, p) in tot.iter_mut().zip(a.stock.parts()) {
            *t += if a.added { -p } else { p };
        }
    }
    println!("{tot:?} {:?}", r.greasy);
    println!("{}", r.working("twister.twist").unwrap().text());
    println!("{:?}", r.warnings);
    let n = plan
        .needed(&[("throw".into(), 12), ("hank".into(), 200)], 0.95, 100_000, 1, 2, &mut |_| true)
        .unwrap();
    println!("{} {}", n.likely, n.enough);
    panic!();
}
