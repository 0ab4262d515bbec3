import stemmers from "snowball-stemmers";
import { describe, expect, it } from "vitest";

/**
 * Sample vocabularies of the Snowball project's pages on its Spanish and German stemmers
 * (snowballstem.org/algorithms), words above their stems; the English one stands with the lexicon.
 */
const samples: Readonly<Record<string, readonly (readonly [string, string])[]>> = {
  spanish: [
    [
      "che checa checar checo checoslovaquia chedraoui chefs cheliabinsk chelo chemical chemicalweek",
      "che chec chec chec checoslovaqui chedraoui chefs cheliabinsk chel chemical chemicalweek",
    ],
    [
      "chemise chepo cheque chequeo cheques cheraw chesca chester chetumal chetumaleños chevrolet",
      "chemis chep chequ cheque chequ cheraw chesc chest chetumal chetumaleñ chevrolet",
    ],
    [
      "cheyene cheyenne chi chía chiapaneca chiapas chiba chic chica chicago chicana chicano chicas",
      "cheyen cheyenn chi chi chiapanec chiap chib chic chic chicag chican chican chic",
    ],
    ["chicharrones chichen chichimecas chicles chico", "chicharron chich chichimec chicl chic"],
    [
      "torá tórax torcer toreado toreados toreándolo torear toreara torearlo toreó torero toreros",
      "tor torax torc tor tor tor tor tor tor tore torer torer",
    ],
    [
      "torio tormenta tormentas tornado tornados tornar tornen torneo torneos tornillo tornillos",
      "tori torment torment torn torn torn torn torne torne tornill tornill",
    ],
    [
      "torniquete torno toro toronto toros torpedearon torpeza torrado torralba torre torrencial",
      "torniquet torn tor toront tor torped torpez torr torralb torr torrencial",
    ],
    [
      "torrenciales torrente torreon torreón torres torrescano",
      "torrencial torrent torreon torreon torr torrescan",
    ],
  ],
  german: [
    [
      "aufeinander aufeinanderbiss aufeinanderfolge aufeinanderfolgen aufeinanderfolgend",
      "aufeinand aufeinanderbiss aufeinanderfolg aufeinanderfolg aufeinanderfolg",
    ],
    [
      "aufeinanderfolgende aufeinanderfolgenden aufeinanderfolgender aufeinanderfolgt",
      "aufeinanderfolg aufeinanderfolg aufeinanderfolg aufeinanderfolgt",
    ],
    [
      "aufeinanderfolgten aufeinanderschlügen aufenthalt aufenthalten aufenthaltes auferlegen",
      "aufeinanderfolgt aufeinanderschlug aufenthalt aufenthalt aufenthalt auferleg",
    ],
    [
      "auferlegt auferlegten auferstand auferstanden auferstehen aufersteht auferstehung",
      "auferlegt auferlegt auferstand auferstand aufersteh aufersteht aufersteh",
    ],
    [
      "auferstünde auferwecken auferweckt auferzogen aufessen auffa auffallen auffallend",
      "auferstund auferweck auferweckt auferzog aufess auffa auffall auffall",
    ],
    [
      "auffallenden auffallender auffällig auffälligen auffälliges auffassen auffasst auffaßt",
      "auffall auffall auffall auffall auffall auffass auffasst auffasst",
    ],
    ["auffassung auffassungsvermögen", "auffass auffassungsvermog"],
    [
      "kategorie kategorien kategorisch kategorische kategorischen kategorischer kater katerliede",
      "kategori kategori kategor kategor kategor kategor kat katerlied",
    ],
    [
      "katern katers käthchen kathedrale kathinka katholik katholische katholischen katholischer",
      "kat kat kathch kathedral kathinka kathol kathol kathol kathol",
    ],
    [
      "kattun kattunhalstücher katz kätzchen kätzchens katze katzen katzenschmer katzensprung",
      "kattun kattunhalstuch katz katzch katzch katz katz katzenschm katzenspr",
    ],
    [
      "katzenwürde kätzin kätzlein katzmann kauen kauerte kauf kaufe kaufen käufer kauffahrer",
      "katzenwurd katzin katzlein katzmann kau kauert kauf kauf kauf kauf kauffahr",
    ],
    ["kaufherr kaufleute käuflich", "kaufherr kaufleut kauflich"],
  ],
};

describe.each(Object.entries(samples))("the %s stemmer", (language, lines) => {
  const stemmer = stemmers.newStemmer(language);

  it("turns every word of its published sample into the published stem", () => {
    const wrong = lines.flatMap(([words, stems]) => {
      const [given, published] = [words.split(" "), stems.split(" ")];
      expect(given).toHaveLength(published.length);
      return given.filter((word, at) => stemmer.stem(word) !== published[at]);
    });
    expect(wrong).toEqual([]);
  });

  it("is given more than sixty of them", () =>
    expect(lines.flatMap(([words]) => words.split(" ")).length).toBeGreaterThan(60));
});
