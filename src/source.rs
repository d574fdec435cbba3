//! The published sources that formulas and units cite, by key.

/// A source.
#[derive(Debug)]
pub struct Source {
    /// The key by which it is cited.
    pub key: &'static str,
    /// Author, title, year.
    pub title: &'static str,
    /// Where it can be read.
    pub place: &'static str,
}

/// The source with a key.
pub fn source(key: &str) -> Option<&'static Source> {
    SOURCES.iter().find(|s| s.key == key)
}

const fn s(key: &'static str, title: &'static str, place: &'static str) -> Source {
    Source { key, title, place }
}

/// Every source that is cited.
pub static SOURCES: &[Source] = &[
    s("definition", "Follows from the definition of the quantities", ""),
    s("practice", "Common practice of the trade; no published source", ""),
    s("memory", "From memory; to be confirmed against a printed source", ""),
    s(
        "Weft-Handed Weaver 2010",
        "The Weft-Handed Weaver, And I told my teachers I didn't need math, 2010",
        "www.thewefthandedweaver.com/blog-1/anditoldmyteachersididntneedmath",
    ),
    s(
        "All Fiber Arts",
        "All Fiber Arts, Beginner weaving: yarn quantities",
        "www.allfiberarts.com/tag/calculate-yarn",
    ),
    s(
        "GSM pages",
        "Pages on grams per square metre of woven cloth: Learn Textile 2013, Garments Merchandising",
        "learn-textile.blogspot.com/2013/10; garmentsmerchandising.com",
    ),
    s(
        "Textile Calculations",
        "Textile Calculations, total quantity of materials in a piece of cloth",
        "www.textilecalculations.com",
    ),
    s(
        "Wikipedia textile units",
        "Wikipedia, article Units of textile measurement, as of August 2019",
        "en.wikipedia.org/wiki/Units_of_textile_measurement",
    ),
    s(
        "ASTM D2260",
        "ASTM D2260, Conversion factors and equivalent yarn numbers",
        "www.astm.org/Standards/D2260.htm",
    ),
    s("ASTM D2260-01", "ASTM D2260-01, preview", "standards.iteh.ai, astm-d2260-01"),
    s(
        "ISO 1144",
        "ISO 1144:2016, Textiles: Universal system for designating linear density (tex system)",
        "ISO",
    ),
    s(
        "ISO 2061",
        "ISO 2061, Textiles: Determination of twist in yarns, direct counting method",
        "ISO",
    ),
    s(
        "ISO 5077",
        "ISO 5077:2007, Textiles: Determination of dimensional change in washing and drying",
        "ISO",
    ),
    s(
        "ISO 5077 preview",
        "ISO 5077:2007, opening clauses",
        "standards.mealir.com/iso-5077-2007-pdf-download.html",
    ),
    s(
        "ISO 5077 summary",
        "Summary of UNE-EN ISO 5077:2008",
        "texfire.net/en/content/iso-5077-estabilidad-dimensional-",
    ),
    s("Wikipedia Broadcloth", "Wikipedia, article Broadcloth", "en.wikipedia.org/wiki/Broadcloth"),
    s(
        "VCH Burford",
        "Victoria County History Explore, Fulling and finishing (Burford)",
        "ihr-archive.github.io/vch-explore/node/12714.html",
    ),
    s("Austria-Forum Loden", "Austria-Forum, article Loden", "austria-forum.org/af/Thema/Loden"),
    s("Sesli Sözlük", "Sesli Sözlük, dictionary, entry on fulled cloth", "www.seslisozluk.net"),
    s(
        "Fibernet blanket",
        "Handspinners' mailing list, message on a shrunken blanket",
        "www.mail-archive.com/fibernet@yahoogroups.com/msg09153.html",
    ),
    s(
        "Oh La La Laine 2015",
        "Handweaver's page, bouclé blanket, 2 April 2015",
        "ohlalalaine.blogspot.com/2015/04/spring-refuse-to-sprung.html",
    ),
    s(
        "Fiber Enthusiast 2008",
        "Handweaver's page, handspun shawl, 22 September 2008",
        "confessionsofafiberenthusiast.blogspot.com/2008/09/washed-blocked-pressed.html",
    ),
    s("Weaving update 2007", "Weaving update, 24 May 2007", "helwen.dreamwidth.org/84696.html"),
    s(
        "Doodledog felting",
        "Felting wool: shrinkage",
        "doodledogprimitives.com/felting-wool-shrinkage",
    ),
    s(
        "Rogue Weaver 2025",
        "The Rogue Weaver, Warp length, take-up and waste, 2025",
        "www.therogueweaver.com/blog/2025/8/22/warp-length-take-up-and-waste",
    ),
    s(
        "ISO 139",
        "ISO 139:2005, Textiles: Standard atmospheres for conditioning and testing",
        "ISO",
    ),
    s("GNU Units", "GNU Units 2.22, definitions database", "Debian package units"),
    s("Davis 1920", "W. Davis, Hosiery Manufacture, Pitman 1920", "Project Gutenberg 51850"),
    s(
        "Taylor 1909",
        "J. T. Taylor, Cotton Weaving and Designing, 6th ed., 1909",
        "Project Gutenberg 57031",
    ),
    s(
        "Brooks 1892",
        "C. P. Brooks, Cotton Manufacturing, 3rd ed., 1892",
        "Project Gutenberg 57681",
    ),
    s("Brooks 1898", "Brooks, Calculations IV, 1898", "library.distantreader.org"),
    s(
        "Nasmith 1890",
        "J. Nasmith, Modern Cotton Spinning Machinery, 1890",
        "Project Gutenberg 57586",
    ),
    s(
        "Howard and Bullough 1909",
        "Howard & Bullough American Machine Co., Illustrated Catalogue of Cotton Machinery, 1909",
        "Project Gutenberg 38301",
    ),
    s(
        "Lincoln 1885",
        "F. L. Lincoln, Instruction Book on Ring Spinning, 1885",
        "Project Gutenberg 33424",
    ),
    s("Blanco 1917", "A. E. Blanco, Piece Goods Manual, 1917", "Project Gutenberg 52227"),
    s("Dooley 1914", "W. H. Dooley, Textiles, 1914", "Project Gutenberg 24077"),
    s(
        "Wolfensberger 1921",
        "A. Wolfensberger, Theory of Silk Weaving, 2nd ed., 1921",
        "Project Gutenberg 14600",
    ),
    s(
        "Woodhouse and Kilgour 1921",
        "T. Woodhouse & P. Kilgour, The Jute Industry, 1921",
        "Project Gutenberg 12443",
    ),
    s(
        "Three Textile Raw Materials 1924",
        "Three Textile Raw Materials and their Manufacture, 1924",
        "Project Gutenberg 71158",
    ),
    s(
        "Wilkinson 1912",
        "F. Wilkinson, The Story of the Cotton Plant, 1912",
        "Project Gutenberg 29586",
    ),
    s(
        "Textile Calculation 2015",
        "Textile Calculation, teaching pages, 2014 and 2015",
        "textilecalculation.blogspot.com",
    ),
    s(
        "BellaOnline",
        "BellaOnline, article on yarn counts",
        "www.bellaonline.com/ArticlesP/art12329.asp",
    ),
    s(
        "Balasubramanian",
        "N. Balasubramanian, notes on conversion factors and on yarn and cloth geometry",
        "business.vsnl.com/balasubramanian",
    ),
    s(
        "Textile Terms 2014",
        "Dictionary of the English textile terms, 2014",
        "textile_terms.en-academic.com",
    ),
    s(
        "Ashenhurst page 1999",
        "Medieval textiles page on the Ashenhurst formula, 1999",
        "www.faena.medievaltextiles.org/ash.html",
    ),
    s(
        "Ground Weave",
        "Ground Weave, Calculated sett: after Ashenhurst and Watson, as taught",
        "groundweave.com/sett-pages/calculating-sett",
    ),
    s(
        "Textile School",
        "Textile School, weaving calculations and fibre formulas",
        "www.textileschool.com",
    ),
    s(
        "GATE solutions",
        "GATE Textile Engineering papers 2003 to 2022 with worked solutions",
        "www.textiletriangle.com/gate-textile/question-paper",
    ),
    s(
        "19 CFR 151",
        "United States customs regulations, 19 CFR 151.61 to 151.70 (wool)",
        "www.govregs.com, title 19",
    ),
    s(
        "French order 1998",
        "French Republic, order of 24 June 1998, Annex II, conventional rates",
        "etalab/lois-non-codifiees-et-reglements-francais",
    ),
    s("Rieter", "Rieter, Rikipedia: technology of short-staple spinning", "www.rieter.com"),
    s("PCT moisture", "PCT, moisture regain conversions", "pctextile.com/archives/8748"),
    s(
        "Moisture blog 2015",
        "Textile Calculation, moisture regain and correct invoice weight, 2015",
        "textilecalculation.blogspot.com/2015/04 and 2015/08",
    ),
    s("Spinning cards", "Flash cards of spinning formulae", "api.brainscape.com, test 3"),
    s(
        "Canmore MV 000240",
        "Historic Environment Scotland, record MV 000240 (spinning mule, 1870)",
        "canmore.org.uk/collection/1466509",
    ),
    s("Collegedunia", "GATE solved questions", "cdquestions.com and questions.collegedunia.com"),
    s(
        "Designation practice",
        "ASTM practice of yarn designation, as explained",
        "mytextilenotes.blogspot.com/2011/07",
    ),
    s(
        "Twist per inch",
        "Twist per inch, article of an encyclopaedia",
        "www.reference.com/browse/wiki/Twist_per_inch",
    ),
    s(
        "Thread tickets",
        "Ticket numbers of sewing thread, teaching pages",
        "garmentsmerchandising.com/ticket-number-of-sewing-thread-used-in-apparel-industry; \
         www.onlineclothingstudy.com/2013/01",
    ),
    s(
        "Worsted handbook",
        "Worsted drawing and spinning handbook, tokenised text, 64s Botany set",
        "phind.xodi.top, max-long/textiles-ner-3-oct",
    ),
    s(
        "Balasubramanian breaks",
        "N. Balasubramanian, Ring frame end breakage distribution",
        "www.scribd.com/document/321807154",
    ),
    s(
        "Winding problems",
        "Worked problems of winding, tutorial pages",
        "textiletutorials.com/mathematical-problem-and-solution-of-winding-in-textile-weaving",
    ),
    s(
        "Winding efficiency",
        "Worked problems of winding efficiency, tutorial pages",
        "textiletutorials.com/how-to-calculate-winding-efficiency-in-textile-weaving-factory",
    ),
    s(
        "Kelly 2012",
        "London weaving, pt. 2, 2012",
        "www.sehkelly.com/words/2012/10/london-weaving-pt-2",
    ),
    s(
        "NPTEL weaving",
        "NPTEL, multiple-choice questions on weaving, 9",
        "nptel.ac.in/content/storage2/courses/116102005/download/mcqm9.htm",
    ),
    s(
        "Carding page",
        "What is the carding process?, questions and answers",
        "experts123.com/q/what-is-the-carding-process.html",
    ),
    s(
        "Woolmark topmaking",
        "Woolmark, Topmaking",
        "www.woolmark.com/knowledge/manufacturing/worsted-system/topmaking",
    ),
    s(
        "Custom Woolen Mills",
        "A Canadian woollen mill on its mule of 1910",
        "www.customwoolenmills.com/spinning",
    ),
    s(
        "Spinning mule summary",
        "Summary of the encyclopaedia article on the spinning mule",
        "wikisum.wiki/wiki/Crompton%27s_mule",
    ),
    s(
        "Winding problems 2014",
        "Worked problems of winding, teaching pages",
        "textilecalculation.blogspot.com/2014/12",
    ),
    s(
        "Britannica 1911",
        "Encyclopaedia Britannica, 11th ed., articles Linen, Jute, Cotton manufacture",
        "Project Gutenberg 41472, 40863, 32294",
    ),
    s(
        "ASTM D1907",
        "ASTM D1907-01, Linear density of yarn by the skein method, scope",
        "i4.madcad.com/store/subscription/ASTM-D1907-01",
    ),
    s(
        "Confidence interval",
        "Wikipedia, article Confidence interval, as of 9 August 2019",
        "en.wikipedia.org/wiki/Confidence_interval",
    ),
    s(
        "Grubbs 1969",
        "F. E. Grubbs, Procedures for detecting outlying observations in samples, Technometrics 11, 1969; from memory",
        "doi.org/10.1080/00401706.1969.10490657",
    ),
    s(
        "Kissling 2011",
        "E. Kissling and others, Bacillus anthracis in a wool-processing factory, Epidemiology and Infection, 2011, abstract",
        "journals.cambridge.org, aid 8520601",
    ),
    s(
        "NPTEL textile testing",
        "A. Das, Evaluation of textile materials, lecture 7, transcript",
        "www.scribd.com/document/525774435",
    ),
    s(
        "Sample size for count",
        "Worked answer on the sample size for a yarn count",
        "textileandapparelinsights.com/?p=260",
    ),
    s(
        "Table A.22",
        "Factors for constructing control charts, table A.22 of a textbook of statistics, p. 766",
        "www.scribd.com/document/575462347",
    ),
    s(
        "Tenacity limits",
        "Worked answer on the 95 % limits of a mean yarn tenacity",
        "assignmentexpert.com, statistics and probability, question 283003",
    ),
    s(
        "Cost slides",
        "Cost control in spinning mills, slides",
        "www.slideshare.net, cost-control-in-spinning-mills",
    ),
    s(
        "Robinson slides",
        "G. Robinson (CSIRO), Fibre breakage in carding, slides, about 1996",
        "slideplayer.com./amp/4468254",
    ),
    s(
        "Fabric costing slides",
        "Fabric costing, slides (a stored copy)",
        "www.scribd.com/presentation/437632010/Fabric-Costing1",
    ),
    s(
        "Yarn costing page",
        "Textile Learner, Cost calculation and control in spinning industry",
        "textilelearner.net/cost-calculation-and-control-in-spinning-industry",
    ),
    s(
        "Custom mill leaflet",
        "A UK custom mill, What happens to my fleece? (leaflet)",
        "docslib.org/doc/5101219",
    ),
    s("Beech 1902", "F. Beech, The Dyeing of Woollen Fabrics, 1902", "free-books.at, book 19534"),
    s(
        "Morton and Hearle",
        "W. E. Morton and J. W. S. Hearle, Physical Properties of Textile Fibres, table 5.1",
        "lib.zlibraries.com/text/ol86qqd65drv, page 51",
    ),
    s(
        "Textile Coach",
        "Textile Coach, Peirce yarn diameter",
        "www.textilecoach.net/post/pierce-yarn-diameter",
    ),
    s("pint 0.25.3", "pint 0.25.3, default definitions", "PyPI package pint"),
    s(
        "Textile handbook 2023",
        "Texcoms, Textile Technical Handbook, 17 May 2023, pages 141 and 147",
        "fliphtml5.com/iczwi/zyvh",
    ),
    s(
        "Grist experiment",
        "Von Strohm, grist experiment, quoting a spinning manual",
        "vonstrohm.blogspot.com",
    ),
    s(
        "Shetland experiment",
        "Ravelry project page, Shetland experiment",
        "ravelry.com, project Shetland experiment",
    ),
    s(
        "Spinning formula sheet",
        "Spinning formula sheet, student hand-out",
        "docx.com.vn/tai-lieu/tpi-tpm-78029",
    ),
    s(
        "Two-fold shrinkage",
        "Twist shrinkage of two-fold staple yarn, Journal of the Textile Machinery Society of Japan 14 (3-4), abstract",
        "www.jstage.jst.go.jp/article/jte1955/14/3-4/14_3-4_115",
    ),
    s(
        "Mill note on yarn",
        "Yarn on the basis of knowledge, a Chinese mill's note in translation",
        "www.decorative-rugs-carpets.com/yarn-on-the-basis-of-knowledge",
    ),
    s("HSE EH23", "HSE Guidance Note EH23, Anthrax: health hazards, 1979", "gulflink.org"),
    s(
        "WorkSafe Q fever",
        "WorkSafe Victoria, Preventing Q fever",
        "www.worksafe.vic.gov.au/preventing-q-fever",
    ),
    s(
        "Rieter manual",
        "Rieter, The Technology of Short-staple Spinning",
        "fliphtml5.com/sejom/knve",
    ),
    s(
        "Teal 1995",
        "P. & J. Teal, twist and count guide, class handout 1995",
        "textilelinks.com/author/rb/980217.html",
    ),
    s(
        "Brown 1923",
        "Brown, Elastic and Non-elastic Narrow Fabrics, 1923",
        "Project Gutenberg 68583",
    ),
    s("Apparel Search", "Apparel Search, glossary, Lea", "www.apparelsearch.com"),
    s(
        "Sweet Georgia",
        "School of SweetGeorgia, sett without wraps",
        "www.schoolofsweetgeorgia.com",
    ),
    s(
        "Hand-knitting note",
        "Note on metric numbers and tex of hand-knitting yarn",
        "www.ncyouthjamboree.org/resulting",
    ),
    s(
        "Yield table",
        "Units of textile measurement, encyclopaedia copy, tex and yield",
        "wiki2.org/en/Units_of_textile_measurement",
    ),
    s(
        "National Research Council 2001",
        "National Research Council (US), Carbon Management, 2001",
        "www.ncbi.nlm.nih.gov/books/NBK44131",
    ),
    s(
        "Twist in silk 2011",
        "Twist in silk, teaching note, 2011",
        "mytextilenotes.blogspot.com/2011/12",
    ),
    s(
        "Rug talk",
        "Rug Talk, yarn sizes, page for hand weavers",
        "oocities.org/rugtalk/yarnsize.html",
    ),
    s("Flexuma", "Table of fibre densities", "flexuma.de/concentration.html"),
    s(
        "Fibre handbook",
        "Handbook of Properties of Textile and Technical Fibres",
        "digilib.universitaspertamina.ac.id, page 28",
    ),
    s(
        "Yarn weights 2014",
        "Standard yarn weights with metric numbers and plies, an encyclopaedia's table as copied in 2014",
        "oddballsindurant.blogspot.com/2014/03",
    ),
    s(
        "Skein Queen 2024",
        "Skein Queen, What are the different yarn weights, 2024",
        "skeinqueenyarns.co.uk/blogs/news",
    ),
    s(
        "Knitting Naturally",
        "Knitting Naturally, yarn comparison chart",
        "www.knitting-naturally.com/yarn-comparison-chart.html",
    ),
    s(
        "Colourspun 2011",
        "Colourspun, Yarn standard chart, 2011",
        "colourspun.blogspot.com/2011/05",
    ),
    s("Twisted yarn 101", "Twisted, Yarn 101: weight", "twistedyarnshop.com/blogs/news"),
    s(
        "Wolle-Strick-Shop",
        "Welche Wolle passt für meine Anleitung",
        "www.wolle-strick-shop.at/wissenswertes",
    ),
    s(
        "Woven fabric handout",
        "Woven fabric calculation, teaching handout of four pages",
        "www.scribd.com/document/455076497",
    ),
    s(
        "Fibres2Fabrics 2013",
        "Fibres2Fabrics, Cover factor of fibre, yarn and fabric, 2013",
        "fibres2fabrics.blogspot.com",
    ),
    s(
        "Galceran",
        "V. Galceran Escobet, Observaciones sobre la fabricación de tejidos con la máxima densidad",
        "fr.scribd.com/doc/52979876, p. 37",
    ),
    s(
        "Osterkamp",
        "P. Osterkamp, weaving tips of 2004 and 2011",
        "www.weaving.cc/leasesticks/jan04tip.html; peggyosterkamp.com/2011/06",
    ),
    s(
        "Lucerne workshop",
        "Lucerne school of art, workshop note: Ermitteln der Fadendichte",
        "sites.hslu.ch/werkstatt/?p=2669",
    ),
    s(
        "Yarn and weight 2026",
        "Yarn count and cloth weight, after Ashenhurst, teaching notes of May 2026",
        "mytextilenotes.blogspot.com/2026/05",
    ),
    s(
        "Moisture review 2020",
        "Review of 2020 in Bioresources and Bioprocessing, table 10, after ASTM D1909-13 and Morton and Hearle 2008",
        "bioresourcesbioprocessing.springeropen.com, s40643-020-00339-1, table 10",
    ),
    s(
        "Britannica 1929",
        "Encyclopaedia Britannica, 14th ed. 1929, article Wool",
        "gluedideas.com, Encyclopedia-Britannica-Volume-23-Part-2",
    ),
    s(
        "Royal Society NZ 1909",
        "Transactions of the Royal Society of New Zealand, vol. 42, 1909",
        "rsnz.natlib.govt.nz/volume/rsnz_42/rsnz_42_00_002480.html",
    ),
    s(
        "Watson Smith 1906",
        "Watson Smith, The Chemistry of Hat Manufacturing, 1906, scouring",
        "bookrags.com/ebooks/17740/60.html",
    ),
    s(
        "Wool scouring 2016",
        "Studio page, Wool scouring and temperature, 2016",
        "abundantearthfiber.com/fiber-love/2016/9/20",
    ),
    s(
        "Woolmark topmaking",
        "Woolmark, Topmaking",
        "www.woolmark.com/knowledge/manufacturing/worsted-system/topmaking",
    ),
    s(
        "Oiling 2016",
        "Hand-spinner's page on oiling a fleece, 2016",
        "readingintrain.blogspot.com/2016/05",
    ),
    s(
        "HSE EH23",
        "Health and Safety Executive, Guidance Note EH23 on anthrax, 1979",
        "gulflink.org, an_disea.html",
    ),
    s(
        "ILO wool",
        "D. A. Hargrave, chapter on wool of the ILO Encyclopaedia of Occupational Health and Safety, as relayed",
        "alumniagri.in/task/what-are-the-health-hazards-associated-with-the-wool-4722829",
    ),
    s(
        "Organic dye",
        "How to scour raw wool, technical note of a dye house",
        "www.organicdye.com/technical-resources/scour-raw-wool",
    ),
    s(
        "WorkSafe Victoria",
        "WorkSafe Victoria, Preventing Q fever",
        "www.worksafe.vic.gov.au/preventing-q-fever",
    ),
    s(
        "Burns 1940",
        "R. H. Burns, Report of progress made in 1938 on wool shrinkage project, 1940, opening",
        "archive.org",
    ),
    s(
        "Tear abstract",
        "Journal of the Textile Institute, The effect of staple strength on worsted processing, part II, abstract",
        "discovery.researcher.life",
    ),
    s(
        "Wool education",
        "Australian Wool Education Trust, list of topics of WOOL 482/582 lecture 12",
        "woolwise.com/module-wool-482-582-12",
    ),
    s(
        "NMSU B-409",
        "C. P. Mathis and B. Faris, Wool Grades, Guide B-409, New Mexico State University",
        "pubs.nmsu.edu/_b/B409",
    ),
    s(
        "Bradford system page",
        "Encyclopaedic page on the Bradford system",
        "theinfolist.com, Bradford System",
    ),
    s(
        "Wool grading page",
        "Farm page on wool grading",
        "www.bellwetherwool.com/index.php/about-our-farms/wool-grading",
    ),
    s("Breed yield table", "Sheep breed yield table", "breedslist.com/wool-sheep"),
    s(
        "Breed directory",
        "American Sheep Industry Association, breed directory",
        "www.sheepusa.org/ResearchEducation_Literature_BreedDirectory",
    ),
    s(
        "Breed sheet",
        "Michigan State Fair, sheep breed sheet",
        "www.michiganstatefairllc.com/sheep",
    ),
    s(
        "Breed standards 2009",
        "Farm page quoting breed standards, 2009",
        "eweifarm.blogspot.com/2009/01",
    ),
    s(
        "Held breed chart",
        "Breed chart after S. E. Held, Weaving, appendix",
        "annex.retroarchive.org, WOOLFACT.TXT",
    ),
    s(
        "Fleece article",
        "Article on fleece weights",
        "biologyinsights.com/how-many-pounds-of-wool-do-you-get-from-a-sheep",
    ),
    s(
        "Riverina wool testing",
        "Riverina wool testing laboratory, terms",
        "www.wooltesters.com.au, ID 60231",
    ),
    s("Hand-spinner 2014", "Hand-spinner's log, September 2014", "gansey.blogspot.com/2014/09"),
    s(
        "Custom mill leaflet",
        "Leaflet of a custom mill, What happens to my fleece?",
        "docslib.org/doc/5101219",
    ),
    s("Alpaca losses", "Page of a fibre processor on losses", "quentialpacas.co.za/losses"),
    s(
        "IE Garments 2025",
        "IE Garments, teaching blog on U% and CVm, 2025",
        "iegarments.blogspot.com/2025/09",
    ),
];
