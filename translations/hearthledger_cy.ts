<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="cy" sourcelanguage="en">
<context>
    <name>Words</name>
    <message>
        <source>overdue</source>
        <translation>hwyr</translation>
    </message>
    <message>
        <source>overdue, booked</source>
        <translation>hwyr, wedi’i drefnu</translation>
    </message>
    <message>
        <source>overdue, of them booked</source>
        <translation>hwyr, ohonynt wedi’u trefnu</translation>
    </message>
    <message>
        <source>last two weeks</source>
        <translation>pythefnos olaf</translation>
    </message>
    <message>
        <source>window open</source>
        <translation>cyfnod ar agor</translation>
    </message>
    <message>
        <source>booked</source>
        <translation>wedi’i drefnu</translation>
    </message>
    <message>
        <source>opening soon</source>
        <translation>yn agor yn fuan</translation>
    </message>
    <message>
        <source>later</source>
        <translation>yn ddiweddarach</translation>
    </message>
    <message>
        <source>no check known</source>
        <translation>dim archwiliad hysbys</translation>
    </message>
    <message>
        <source>no check asked for</source>
        <translation>dim archwiliad yn ofynnol</translation>
    </message>
    <message>
        <source>%1 (at the latest %2: by the reading of the law)</source>
        <translation>%1 (%2 fan bellaf: yn ôl y ffordd y darllenir y gyfraith)</translation>
    </message>
    <message>
        <source>How many stand where</source>
        <translation>Faint sydd ymhle</translation>
    </message>
    <message>
        <source>Premises</source>
        <translation>Eiddo</translation>
    </message>
    <message>
        <source>Address</source>
        <translation>Cyfeiriad</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Cyflwr</translation>
    </message>
    <message>
        <source>Last check</source>
        <translation>Archwiliad diwethaf</translation>
    </message>
    <message>
        <source>Due by</source>
        <translation>Yn ddyledus erbyn</translation>
    </message>
    <message>
        <source>Booked for</source>
        <translation>Wedi’i drefnu ar gyfer</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Cofnod</translation>
    </message>
    <message>
        <source>Letters</source>
        <translation>Llythyrau</translation>
    </message>
    <message>
        <source>Gas safety checks: summary</source>
        <translation>Archwiliadau diogelwch nwy: crynodeb</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>tudalen %1 o %2</translation>
    </message>
    <message>
        <source>Demonstration: not a real record</source>
        <translation>Arddangosiad: nid cofnod go iawn</translation>
    </message>
    <message>
        <source>A list of what our records say on the day above; the records themselves count.</source>
        <translation>Rhestr o’r hyn y mae ein cofnodion yn ei ddweud ar y diwrnod uchod; y cofnodion eu hunain sy’n cyfrif.</translation>
    </message>
    <message>
        <source>meter not said</source>
        <translation>mesurydd heb ei nodi</translation>
    </message>
    <message>
        <source>goes on in the list below</source>
        <translation>yn parhau yn y rhestr isod</translation>
    </message>
    <message>
        <source>after %1</source>
        <translation>ar ôl %1</translation>
    </message>
    <message>
        <source>capped</source>
        <translation>wedi’i gapio</translation>
    </message>
    <message>
        <source>appliance taken away</source>
        <translation>cyfarpar wedi’i dynnu ymaith</translation>
    </message>
    <message>
        <source>appliance, kind not entered</source>
        <translation>cyfarpar, math heb ei nodi</translation>
    </message>
    <message>
        <source>drop not known</source>
        <translation>cwymp anhysbys</translation>
    </message>
    <message>
        <source>at least %1 lost at full load, fittings not said</source>
        <translation>o leiaf %1 wedi’i golli ar lwyth llawn, ffitiadau heb eu nodi</translation>
    </message>
    <message>
        <source>%1 lost at full load</source>
        <translation>%1 wedi’i golli ar lwyth llawn</translation>
    </message>
    <message>
        <source>the most</source>
        <translation>y mwyaf</translation>
    </message>
    <message>
        <source>at least %1 lost as timed</source>
        <translation>o leiaf %1 wedi’i golli fel yr amserwyd</translation>
    </message>
    <message>
        <source>%1 lost as timed</source>
        <translation>%1 wedi’i golli fel yr amserwyd</translation>
    </message>
    <message>
        <source>Dashed: not under test.</source>
        <translation>Llinell doredig: ddim dan brawf.</translation>
    </message>
    <message>
        <source>What is lost is worked out from sizes, lengths, fittings and flows by the law for smooth pipe; it was not measured. The limit stands with the findings.</source>
        <translation>Cyfrifir yr hyn a gollir o feintiau, hydoedd, ffitiadau a llifoedd yn ôl y ddeddf ar gyfer pibell lefn; ni chafodd ei fesur. Mae’r terfyn gyda’r canfyddiadau.</translation>
    </message>
    <message>
        <source>Ratio CO/CO₂</source>
        <translation>Cymhareb CO/CO₂</translation>
    </message>
    <message>
        <source>worked out</source>
        <translation>wedi’i gyfrifo</translation>
    </message>
    <message>
        <source>CO</source>
        <translation>CO</translation>
    </message>
    <message>
        <source>ppm</source>
        <translation>ppm</translation>
    </message>
    <message>
        <source>CO₂</source>
        <translation>CO₂</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>highest rate</source>
        <translation>cyfradd uchaf</translation>
    </message>
    <message>
        <source>lowest rate</source>
        <translation>cyfradd isaf</translation>
    </message>
    <message>
        <source>as left</source>
        <translation>fel y’i gadawyd</translation>
    </message>
    <message>
        <source>before it was adjusted</source>
        <translation>cyn ei addasu</translation>
    </message>
    <message>
        <source>Let-by</source>
        <translation>Gollwng heibio</translation>
    </message>
    <message>
        <source>Tightness</source>
        <translation>Tyndra</translation>
    </message>
    <message>
        <source>Retest, appliances isolated</source>
        <translation>Ailbrawf, cyfarpar wedi’u hynysu</translation>
    </message>
    <message>
        <source>pressure, mbar</source>
        <translation>pwysedd, mbar</translation>
    </message>
    <message>
        <source>start</source>
        <translation>dechrau</translation>
    </message>
    <message>
        <source>end</source>
        <translation>diwedd</translation>
    </message>
    <message>
        <source>read; the bar is the uncertainty of the change, ±%1</source>
        <translation>darlleniad; y bar yw ansicrwydd y newid, ±%1</translation>
    </message>
    <message>
        <source>Carbon monoxide as it was watched</source>
        <translation>Carbon monocsid fel y’i gwyliwyd</translation>
    </message>
    <message>
        <source>minutes since the watch began</source>
        <translation>munudau ers dechrau gwylio</translation>
    </message>
    <message>
        <source>%1: %2 readings over %3, the highest %4.</source>
        <translation>%1: %2 o ddarlleniadau dros %3, yr uchaf yn %4.</translation>
    </message>
    <message>
        <source>What was watched decides nothing: the findings rest on the readings in the series.</source>
        <translation>Nid yw’r hyn a wyliwyd yn penderfynu dim: ar ddarlleniadau’r gyfres y mae’r canfyddiadau’n gorffwys.</translation>
    </message>
    <message>
        <source>Carbon monoxide over time</source>
        <translation>Carbon monocsid dros amser</translation>
    </message>
    <message>
        <source>minutes since the first reading</source>
        <translation>munudau ers y darlleniad cyntaf</translation>
    </message>
    <message>
        <source>%1 January %2</source>
        <translation>%1 Ionawr %2</translation>
    </message>
    <message>
        <source>%1 February %2</source>
        <translation>%1 Chwefror %2</translation>
    </message>
    <message>
        <source>%1 March %2</source>
        <translation>%1 Mawrth %2</translation>
    </message>
    <message>
        <source>%1 April %2</source>
        <translation>%1 Ebrill %2</translation>
    </message>
    <message>
        <source>%1 May %2</source>
        <translation>%1 Mai %2</translation>
    </message>
    <message>
        <source>%1 June %2</source>
        <translation>%1 Mehefin %2</translation>
    </message>
    <message>
        <source>%1 July %2</source>
        <translation>%1 Gorffennaf %2</translation>
    </message>
    <message>
        <source>%1 August %2</source>
        <translation>%1 Awst %2</translation>
    </message>
    <message>
        <source>%1 September %2</source>
        <translation>%1 Medi %2</translation>
    </message>
    <message>
        <source>%1 October %2</source>
        <translation>%1 Hydref %2</translation>
    </message>
    <message>
        <source>%1 November %2</source>
        <translation>%1 Tachwedd %2</translation>
    </message>
    <message>
        <source>%1 December %2</source>
        <translation>%1 Rhagfyr %2</translation>
    </message>
    <message>
        <source>%1 Jan %2</source>
        <translation>%1 Ion %2</translation>
    </message>
    <message>
        <source>%1 Feb %2</source>
        <translation>%1 Chwe %2</translation>
    </message>
    <message>
        <source>%1 Mar %2</source>
        <translation>%1 Maw %2</translation>
    </message>
    <message>
        <source>%1 Apr %2</source>
        <translation>%1 Ebr %2</translation>
    </message>
    <message>
        <source>%1 Jun %2</source>
        <translation>%1 Meh %2</translation>
    </message>
    <message>
        <source>%1 Jul %2</source>
        <translation>%1 Gorff %2</translation>
    </message>
    <message>
        <source>%1 Aug %2</source>
        <translation>%1 Awst %2</translation>
    </message>
    <message>
        <source>%1 Sep %2</source>
        <translation>%1 Medi %2</translation>
    </message>
    <message>
        <source>%1 Oct %2</source>
        <translation>%1 Hyd %2</translation>
    </message>
    <message>
        <source>%1 Nov %2</source>
        <translation>%1 Tach %2</translation>
    </message>
    <message>
        <source>%1 Dec %2</source>
        <translation>%1 Rhag %2</translation>
    </message>
    <message>
        <source>pass</source>
        <translation>pasio</translation>
    </message>
    <message>
        <source>fail</source>
        <translation>methu</translation>
    </message>
    <message>
        <source>look again</source>
        <translation>edrych eto</translation>
    </message>
    <message>
        <source>no verdict</source>
        <translation>dim dyfarniad</translation>
    </message>
    <message>
        <source>Natural gas</source>
        <translation>Nwy naturiol</translation>
    </message>
    <message>
        <source>Propane (LPG)</source>
        <translation>Propan (LPG)</translation>
    </message>
    <message>
        <source>Butane (LPG)</source>
        <translation>Bwtan (LPG)</translation>
    </message>
    <message>
        <source>LPG/air mixture</source>
        <translation>Cymysgedd LPG/aer</translation>
    </message>
    <message>
        <source>trade table</source>
        <translation>tabl y grefft</translation>
    </message>
    <message>
        <source>from the tube&apos;s dimensions</source>
        <translation>o ddimensiynau’r tiwb</translation>
    </message>
    <message>
        <source>typed in</source>
        <translation>wedi’i deipio</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Cwsmer</translation>
    </message>
    <message>
        <source>Landlord</source>
        <translation>Landlord</translation>
    </message>
    <message>
        <source>Agent</source>
        <translation>Asiant</translation>
    </message>
    <message>
        <source>Home owner</source>
        <translation>Perchennog y cartref</translation>
    </message>
    <message>
        <source>Tenant</source>
        <translation>Tenant</translation>
    </message>
    <message>
        <source>Responsible person</source>
        <translation>Person cyfrifol</translation>
    </message>
    <message>
        <source>England</source>
        <translation>Lloegr</translation>
    </message>
    <message>
        <source>Wales</source>
        <translation>Cymru</translation>
    </message>
    <message>
        <source>Scotland</source>
        <translation>Yr Alban</translation>
    </message>
    <message>
        <source>Northern Ireland</source>
        <translation>Gogledd Iwerddon</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>Organisation</source>
        <translation>Sefydliad</translation>
    </message>
    <message>
        <source>Electronic pressure gauge</source>
        <translation>Medrydd pwysedd electronig</translation>
    </message>
    <message>
        <source>Water gauge (U-tube)</source>
        <translation>Medrydd dŵr (tiwb U)</translation>
    </message>
    <message>
        <source>Flue gas analyser</source>
        <translation>Dadansoddydd nwyon ffliw</translation>
    </message>
    <message>
        <source>Gas leak detector</source>
        <translation>Canfodydd gollyngiadau nwy</translation>
    </message>
    <message>
        <source>No-contact voltage detector</source>
        <translation>Canfodydd foltedd digyffwrdd</translation>
    </message>
    <message>
        <source>Other instrument</source>
        <translation>Offeryn arall</translation>
    </message>
    <message>
        <source>Copper</source>
        <translation>Copr</translation>
    </message>
    <message>
        <source>Steel, medium</source>
        <translation>Dur, canolig</translation>
    </message>
    <message>
        <source>Steel, heavy</source>
        <translation>Dur, trwm</translation>
    </message>
    <message>
        <source>Polyethylene SDR 11</source>
        <translation>Polyethylen SDR 11</translation>
    </message>
    <message>
        <source>Polyethylene SDR 17.6</source>
        <translation>Polyethylen SDR 17.6</translation>
    </message>
    <message>
        <source>Corrugated</source>
        <translation>Rhychog</translation>
    </message>
    <message>
        <source>Firm&apos;s name</source>
        <translation>Enw’r cwmni</translation>
    </message>
    <message>
        <source>Firm&apos;s address</source>
        <translation>Cyfeiriad y cwmni</translation>
    </message>
    <message>
        <source>Firm&apos;s registration number</source>
        <translation>Rhif cofrestru’r cwmni</translation>
    </message>
    <message>
        <source>Address of the premises</source>
        <translation>Cyfeiriad yr eiddo</translation>
    </message>
    <message>
        <source>Postcode of the premises</source>
        <translation>Cod post yr eiddo</translation>
    </message>
    <message>
        <source>Name of the customer, owner or agent</source>
        <translation>Enw’r cwsmer, y perchennog neu’r asiant</translation>
    </message>
    <message>
        <source>Engineer</source>
        <translation>Peiriannydd</translation>
    </message>
    <message>
        <source>Engineer&apos;s card number</source>
        <translation>Rhif cerdyn y peiriannydd</translation>
    </message>
    <message>
        <source>Gas</source>
        <translation>Nwy</translation>
    </message>
    <message>
        <source>Meter</source>
        <translation>Mesurydd</translation>
    </message>
    <message>
        <source>Gauge&apos;s serial number</source>
        <translation>Rhif cyfresol y medrydd</translation>
    </message>
    <message>
        <source>Gauge&apos;s calibration date</source>
        <translation>Dyddiad graddnodi’r medrydd</translation>
    </message>
    <message>
        <source>Pipes with size and length, or the volume</source>
        <translation>Pibellau gyda maint a hyd, neu’r cyfaint</translation>
    </message>
    <message>
        <source>What a pipe goes on from</source>
        <translation>Yr hyn y mae pibell yn parhau ohono</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Dyddiad</translation>
    </message>
    <message>
        <source>Name of the landlord or agent</source>
        <translation>Enw’r landlord neu’r asiant</translation>
    </message>
    <message>
        <source>Address of the landlord or agent</source>
        <translation>Cyfeiriad y landlord neu’r asiant</translation>
    </message>
    <message>
        <source>Name of the home owner</source>
        <translation>Enw perchennog y cartref</translation>
    </message>
    <message>
        <source>An appliance that was inspected or looked at</source>
        <translation>Cyfarpar a archwiliwyd neu yr edrychwyd arno</translation>
    </message>
    <message>
        <source>Kind of the appliance</source>
        <translation>Math y cyfarpar</translation>
    </message>
    <message>
        <source>Make of the appliance</source>
        <translation>Gwneuthuriad y cyfarpar</translation>
    </message>
    <message>
        <source>Model of the appliance</source>
        <translation>Model y cyfarpar</translation>
    </message>
    <message>
        <source>Serial number of the appliance</source>
        <translation>Rhif cyfresol y cyfarpar</translation>
    </message>
    <message>
        <source>Where the appliance is</source>
        <translation>Lle mae’r cyfarpar</translation>
    </message>
    <message>
        <source>Kind of flue</source>
        <translation>Math o ffliw</translation>
    </message>
    <message>
        <source>Analyser&apos;s serial number</source>
        <translation>Rhif cyfresol y dadansoddydd</translation>
    </message>
    <message>
        <source>Analyser&apos;s calibration date</source>
        <translation>Dyddiad graddnodi’r dadansoddydd</translation>
    </message>
    <message>
        <source>A room</source>
        <translation>Ystafell</translation>
    </message>
    <message>
        <source>Immediately dangerous or at risk, as the engineer decides</source>
        <translation>Immediately Dangerous neu At Risk, fel y penderfyna’r peiriannydd</translation>
    </message>
    <message>
        <source>What is wrong</source>
        <translation>Beth sydd o’i le</translation>
    </message>
    <message>
        <source>Where it is</source>
        <translation>Lle mae</translation>
    </message>
    <message>
        <source>Serial numbers of all instruments</source>
        <translation>Rhifau cyfresol pob offeryn</translation>
    </message>
    <message>
        <source>Calibration dates of all instruments</source>
        <translation>Dyddiadau graddnodi pob offeryn</translation>
    </message>
    <message>
        <source>Address of whom the letter goes to</source>
        <translation>Cyfeiriad y sawl y mae’r llythyr yn mynd ato</translation>
    </message>
    <message>
        <source>Gas tightness and purge record</source>
        <translation>Cofnod tyndra a charthu nwy</translation>
    </message>
    <message>
        <source>Landlord&apos;s gas safety record</source>
        <translation>Landlord&apos;s gas safety record (cofnod diogelwch nwy’r landlord)</translation>
    </message>
    <message>
        <source>Home owner&apos;s gas safety record</source>
        <translation>Cofnod diogelwch nwy perchennog y cartref</translation>
    </message>
    <message>
        <source>Installation and commissioning record</source>
        <translation>Cofnod gosod a chomisiynu</translation>
    </message>
    <message>
        <source>Service and maintenance record</source>
        <translation>Cofnod gwasanaethu a chynnal a chadw</translation>
    </message>
    <message>
        <source>Strength, tightness and purge record, larger pipework</source>
        <translation>Cofnod cryfder, tyndra a charthu, pibellau mwy</translation>
    </message>
    <message>
        <source>Warning notice</source>
        <translation>Warning notice (hysbysiad rhybudd)</translation>
    </message>
    <message>
        <source>Report on carbon monoxide or fumes in a room</source>
        <translation>Adroddiad ar garbon monocsid neu fygdarth mewn ystafell</translation>
    </message>
    <message>
        <source>Entry of a reportable gas incident, RIDDOR 11(2)</source>
        <translation>Cofnodiad o ddigwyddiad nwy adroddadwy, RIDDOR 11(2)</translation>
    </message>
    <message>
        <source>Notification under the building regulations</source>
        <translation>Hysbysiad o dan y rheoliadau adeiladu</translation>
    </message>
    <message>
        <source>Calibration log of the instruments</source>
        <translation>Cofnod graddnodi’r offerynnau</translation>
    </message>
    <message>
        <source>Reminder that a check is due</source>
        <translation>Nodyn atgoffa bod archwiliad yn ddyledus</translation>
    </message>
    <message>
        <source>Letter after no access</source>
        <translation>Llythyr ar ôl methu cael mynediad</translation>
    </message>
    <message>
        <source>Letter with a record</source>
        <translation>Llythyr gyda chofnod</translation>
    </message>
    <message>
        <source>Corrugated DN %1</source>
        <translation>Rhychog DN %1</translation>
    </message>
    <message>
        <source>Corrugated, size not said</source>
        <translation>Rhychog, maint heb ei nodi</translation>
    </message>
    <message>
        <source>No meter in this part</source>
        <translation>Dim mesurydd yn y rhan hon</translation>
    </message>
    <message>
        <source>Another meter</source>
        <translation>Mesurydd arall</translation>
    </message>
    <message>
        <source>%1: typed, but can&apos;t be used</source>
        <translation>%1: wedi’i deipio, ond ni ellir ei ddefnyddio</translation>
    </message>
    <message>
        <source>%1: not entered</source>
        <translation>%1: heb ei nodi</translation>
    </message>
    <message>
        <source>wanted by: %1</source>
        <translation>yn ofynnol gan: %1</translation>
    </message>
    <message>
        <source>Customer&apos;s reference</source>
        <translation>Cyfeirnod y cwsmer</translation>
    </message>
    <message>
        <source>Who was there</source>
        <translation>Pwy oedd yno</translation>
    </message>
    <message>
        <source>Smell of gas on arrival</source>
        <translation>Arogl nwy wrth gyrraedd</translation>
    </message>
    <message>
        <source>Open ends</source>
        <translation>Pennau agored</translation>
    </message>
    <message>
        <source>Pipe safe to touch</source>
        <translation>Pibell yn ddiogel i’w chyffwrdd</translation>
    </message>
    <message>
        <source>Visual inspection</source>
        <translation>Archwiliad gweledol</translation>
    </message>
    <message>
        <source>What was seen</source>
        <translation>Yr hyn a welwyd</translation>
    </message>
    <message>
        <source>Tested to</source>
        <translation>Profwyd yn ôl</translation>
    </message>
    <message>
        <source>Pipework tested</source>
        <translation>Pibellau a brofwyd</translation>
    </message>
    <message>
        <source>How much was tested</source>
        <translation>Faint a brofwyd</translation>
    </message>
    <message>
        <source>Which part</source>
        <translation>Pa ran</translation>
    </message>
    <message>
        <source>Appliances during the test</source>
        <translation>Cyfarpar yn ystod y prawf</translation>
    </message>
    <message>
        <source>What was open and shut</source>
        <translation>Beth oedd ar agor ac ar gau</translation>
    </message>
    <message>
        <source>Pilot lights</source>
        <translation>Goleuadau peilot</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Medrydd</translation>
    </message>
    <message>
        <source>Gauge zeroed before connecting</source>
        <translation>Medrydd wedi’i seroi cyn ei gysylltu</translation>
    </message>
    <message>
        <source>Smell of gas during the test</source>
        <translation>Arogl nwy yn ystod y prawf</translation>
    </message>
    <message>
        <source>Volume from elsewhere</source>
        <translation>Cyfaint o ffynhonnell arall</translation>
    </message>
    <message>
        <source>Let-by, start</source>
        <translation>Gollwng heibio, dechrau</translation>
    </message>
    <message>
        <source>Let-by, end</source>
        <translation>Gollwng heibio, diwedd</translation>
    </message>
    <message>
        <source>Let-by, from</source>
        <translation>Gollwng heibio, o</translation>
    </message>
    <message>
        <source>Let-by, to</source>
        <translation>Gollwng heibio, hyd</translation>
    </message>
    <message>
        <source>Settling, start</source>
        <translation>Sefydlogi, dechrau</translation>
    </message>
    <message>
        <source>Settling, end</source>
        <translation>Sefydlogi, diwedd</translation>
    </message>
    <message>
        <source>Settling, from</source>
        <translation>Sefydlogi, o</translation>
    </message>
    <message>
        <source>Settling, to</source>
        <translation>Sefydlogi, hyd</translation>
    </message>
    <message>
        <source>Tightness, start</source>
        <translation>Tyndra, dechrau</translation>
    </message>
    <message>
        <source>Tightness, end</source>
        <translation>Tyndra, diwedd</translation>
    </message>
    <message>
        <source>Tightness, from</source>
        <translation>Tyndra, o</translation>
    </message>
    <message>
        <source>Tightness, to</source>
        <translation>Tyndra, hyd</translation>
    </message>
    <message>
        <source>Second display, start</source>
        <translation>Ail sgrin, dechrau</translation>
    </message>
    <message>
        <source>Second display, end</source>
        <translation>Ail sgrin, diwedd</translation>
    </message>
    <message>
        <source>Why the pressure could not be reached</source>
        <translation>Pam na ellid cyrraedd y pwysedd</translation>
    </message>
    <message>
        <source>Temperature change assumed</source>
        <translation>Newid tymheredd a dybiwyd</translation>
    </message>
    <message>
        <source>Retest, start</source>
        <translation>Ailbrawf, dechrau</translation>
    </message>
    <message>
        <source>Retest, end</source>
        <translation>Ailbrawf, diwedd</translation>
    </message>
    <message>
        <source>Retest, from</source>
        <translation>Ailbrawf, o</translation>
    </message>
    <message>
        <source>Retest, to</source>
        <translation>Ailbrawf, hyd</translation>
    </message>
    <message>
        <source>Purged</source>
        <translation>Wedi’i garthu</translation>
    </message>
    <message>
        <source>Purged through</source>
        <translation>Carthwyd drwy</translation>
    </message>
    <message>
        <source>Volume passed at the meter</source>
        <translation>Cyfaint a basiodd drwy’r mesurydd</translation>
    </message>
    <message>
        <source>Steady flame at every appliance</source>
        <translation>Fflam sefydlog ym mhob cyfarpar</translation>
    </message>
    <message>
        <source>Test point proved with leak detection fluid</source>
        <translation>Pwynt prawf wedi’i brofi â hylif canfod gollyngiadau</translation>
    </message>
    <message>
        <source>Disturbed joints proved with leak detection fluid</source>
        <translation>Uniadau a darfwyd wedi’u profi â hylif canfod gollyngiadau</translation>
    </message>
    <message>
        <source>Fluid wiped off</source>
        <translation>Hylif wedi’i sychu ymaith</translation>
    </message>
    <message>
        <source>Standing pressure at the meter</source>
        <translation>Pwysedd sefydlog wrth y mesurydd</translation>
    </message>
    <message>
        <source>Working pressure at the meter</source>
        <translation>Pwysedd gweithio wrth y mesurydd</translation>
    </message>
    <message>
        <source>With what burning</source>
        <translation>Gyda beth yn llosgi</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Sylwadau</translation>
    </message>
    <message>
        <source>Signed by the engineer</source>
        <translation>Llofnodwyd gan y peiriannydd</translation>
    </message>
    <message>
        <source>Received by</source>
        <translation>Derbyniwyd gan</translation>
    </message>
    <message>
        <source>none disturbed</source>
        <translation>dim un wedi’i darfu</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ie</translation>
    </message>
    <message>
        <source>no</source>
        <translation>na</translation>
    </message>
    <message>
        <source>not needed</source>
        <translation>dim angen</translation>
    </message>
    <message>
        <source>none seen</source>
        <translation>ni welwyd dim</translation>
    </message>
    <message>
        <source>found and sealed</source>
        <translation>canfuwyd a seliwyd</translation>
    </message>
    <message>
        <source>found open</source>
        <translation>canfuwyd ar agor</translation>
    </message>
    <message>
        <source>not looked for</source>
        <translation>ni chwiliwyd amdanynt</translation>
    </message>
    <message>
        <source>safe</source>
        <translation>diogel</translation>
    </message>
    <message>
        <source>voltage found</source>
        <translation>canfuwyd foltedd</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>heb ei wneud</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>cadarn</translation>
    </message>
    <message>
        <source>defects noted</source>
        <translation>nodwyd diffygion</translation>
    </message>
    <message>
        <source>new</source>
        <translation>newydd</translation>
    </message>
    <message>
        <source>existing</source>
        <translation>presennol</translation>
    </message>
    <message>
        <source>whole installation</source>
        <translation>y gosodiad cyfan</translation>
    </message>
    <message>
        <source>a part</source>
        <translation>rhan</translation>
    </message>
    <message>
        <source>connected, all off</source>
        <translation>wedi’u cysylltu, pob un i ffwrdd</translation>
    </message>
    <message>
        <source>isolated at their valves</source>
        <translation>wedi’u hynysu wrth eu falfiau</translation>
    </message>
    <message>
        <source>none connected</source>
        <translation>dim un wedi’i gysylltu</translation>
    </message>
    <message>
        <source>out</source>
        <translation>wedi’u diffodd</translation>
    </message>
    <message>
        <source>none fitted</source>
        <translation>dim un wedi’i osod</translation>
    </message>
    <message>
        <source>left lit</source>
        <translation>wedi’u gadael ynghyn</translation>
    </message>
    <message>
        <source>an open burner</source>
        <translation>llosgydd agored</translation>
    </message>
    <message>
        <source>to a ventilated place, no source of ignition</source>
        <translation>i le wedi’i awyru, dim ffynhonnell danio</translation>
    </message>
    <message>
        <source>natural gas</source>
        <translation>nwy naturiol</translation>
    </message>
    <message>
        <source>propane</source>
        <translation>propan</translation>
    </message>
    <message>
        <source>butane</source>
        <translation>bwtan</translation>
    </message>
    <message>
        <source>LPG-air</source>
        <translation>LPG-aer</translation>
    </message>
    <message>
        <source>usual British mix</source>
        <translation>cymysgedd arferol Prydain</translation>
    </message>
    <message>
        <source>usual mix, richer in CO₂</source>
        <translation>cymysgedd arferol, mwy o CO₂</translation>
    </message>
    <message>
        <source>G20 (methane)</source>
        <translation>G20 (methan)</translation>
    </message>
    <message>
        <source>G21</source>
        <translation>G21</translation>
    </message>
    <message>
        <source>G23</source>
        <translation>G23</translation>
    </message>
    <message>
        <source>G25</source>
        <translation>G25</translation>
    </message>
    <message>
        <source>G30 (butane)</source>
        <translation>G30 (bwtan)</translation>
    </message>
    <message>
        <source>G31 (propane)</source>
        <translation>G31 (propan)</translation>
    </message>
    <message>
        <source>inside, small or poorly ventilated</source>
        <translation>y tu mewn, bach neu wedi’i awyru’n wael</translation>
    </message>
    <message>
        <source>inside, a ventilated room</source>
        <translation>y tu mewn, ystafell wedi’i hawyru</translation>
    </message>
    <message>
        <source>inside, a large ventilated room</source>
        <translation>y tu mewn, ystafell fawr wedi’i hawyru</translation>
    </message>
    <message>
        <source>buried</source>
        <translation>wedi’i gladdu</translation>
    </message>
    <message>
        <source>water gauge, to 120 mbar</source>
        <translation>medrydd dŵr, hyd at 120 mbar</translation>
    </message>
    <message>
        <source>gauge with heavy fluid (1.99), to 200 mbar</source>
        <translation>medrydd hylif trwm (1.99), hyd at 200 mbar</translation>
    </message>
    <message>
        <source>electronic, one decimal, to 200 mbar</source>
        <translation>electronig, un lle degol, hyd at 200 mbar</translation>
    </message>
    <message>
        <source>electronic, two decimals, to 200 mbar</source>
        <translation>electronig, dau le degol, hyd at 200 mbar</translation>
    </message>
    <message>
        <source>electronic, one decimal, to 2 bar</source>
        <translation>electronig, un lle degol, hyd at 2 bar</translation>
    </message>
    <message>
        <source>electronic, no decimals, to 20 bar</source>
        <translation>electronig, dim lleoedd degol, hyd at 20 bar</translation>
    </message>
    <message>
        <source>mercury gauge, to 1 bar</source>
        <translation>medrydd mercwri, hyd at 1 bar</translation>
    </message>
    <message>
        <source>the fuel gas</source>
        <translation>y nwy tanwydd</translation>
    </message>
    <message>
        <source>air or nitrogen</source>
        <translation>aer neu nitrogen</translation>
    </message>
    <message>
        <source>condensing boiler</source>
        <translation>boeler cyddwyso</translation>
    </message>
    <message>
        <source>boiler, not condensing</source>
        <translation>boeler, nid cyddwyso</translation>
    </message>
    <message>
        <source>warm-air heater, circulator</source>
        <translation>gwresogydd aer cynnes, cylchredydd</translation>
    </message>
    <message>
        <source>fire before a back boiler</source>
        <translation>tân o flaen boeler cefn</translation>
    </message>
    <message>
        <source>fire, open-flued space heater</source>
        <translation>tân, gwresogydd ffliw agored</translation>
    </message>
    <message>
        <source>water heater, open-flued</source>
        <translation>gwresogydd dŵr, ffliw agored</translation>
    </message>
    <message>
        <source>water heater, room-sealed</source>
        <translation>gwresogydd dŵr, seliedig o’r ystafell</translation>
    </message>
    <message>
        <source>space heater, flueless</source>
        <translation>gwresogydd gofod, di-ffliw</translation>
    </message>
    <message>
        <source>range cooker with a flue</source>
        <translation>popty mawr â ffliw</translation>
    </message>
    <message>
        <source>tumble dryer</source>
        <translation>sychwr dillad</translation>
    </message>
    <message>
        <source>decorative fuel effect fire</source>
        <translation>tân nwy addurniadol</translation>
    </message>
    <message>
        <source>LPG cabinet heater</source>
        <translation>gwresogydd cabinet LPG</translation>
    </message>
    <message>
        <source>back boiler</source>
        <translation>boeler cefn</translation>
    </message>
    <message>
        <source>flueless water heater</source>
        <translation>gwresogydd dŵr di-ffliw</translation>
    </message>
    <message>
        <source>oven</source>
        <translation>popty</translation>
    </message>
    <message>
        <source>grill</source>
        <translation>gril</translation>
    </message>
    <message>
        <source>hotplate</source>
        <translation>hob</translation>
    </message>
    <message>
        <source>another</source>
        <translation>arall</translation>
    </message>
    <message>
        <source>room-sealed</source>
        <translation>seliedig o’r ystafell</translation>
    </message>
    <message>
        <source>open-flued</source>
        <translation>ffliw agored</translation>
    </message>
    <message>
        <source>flueless</source>
        <translation>di-ffliw</translation>
    </message>
    <message>
        <source>net</source>
        <translation>net</translation>
    </message>
    <message>
        <source>gross</source>
        <translation>gros</translation>
    </message>
    <message>
        <source>metric (m³)</source>
        <translation>metrig (m³)</translation>
    </message>
    <message>
        <source>imperial (ft³)</source>
        <translation>imperial (ft³)</translation>
    </message>
    <message>
        <source>volume worked out by hand</source>
        <translation>cyfaint wedi’i gyfrifo â llaw</translation>
    </message>
    <message>
        <source>1 ft³</source>
        <translation>1 ft³</translation>
    </message>
    <message>
        <source>2 ft³</source>
        <translation>2 ft³</translation>
    </message>
    <message>
        <source>5 ft³</source>
        <translation>5 ft³</translation>
    </message>
    <message>
        <source>10 ft³</source>
        <translation>10 ft³</translation>
    </message>
    <message>
        <source>none</source>
        <translation>dim</translation>
    </message>
    <message>
        <source>fixed factor of bills</source>
        <translation>ffactor sefydlog biliau</translation>
    </message>
    <message>
        <source>by pressure, temperature, height</source>
        <translation>yn ôl pwysedd, tymheredd, uchder</translation>
    </message>
    <message>
        <source>a room</source>
        <translation>ystafell</translation>
    </message>
    <message>
        <source>an internal space: hall, landing</source>
        <translation>gofod mewnol: cyntedd, landin</translation>
    </message>
    <message>
        <source>a boiler room, above 70 kW</source>
        <translation>ystafell foeleri, dros 70 kW</translation>
    </message>
    <message>
        <source>a boiler enclosure, above 70 kW</source>
        <translation>lloc boeler, dros 70 kW</translation>
    </message>
    <message>
        <source>up to half of the time</source>
        <translation>hyd at hanner yr amser</translation>
    </message>
    <message>
        <source>half to three quarters</source>
        <translation>hanner i dri chwarter</translation>
    </message>
    <message>
        <source>more than that</source>
        <translation>mwy na hynny</translation>
    </message>
    <message>
        <source>an appliance with a flue</source>
        <translation>cyfarpar â ffliw</translation>
    </message>
    <message>
        <source>a cooker</source>
        <translation>popty coginio</translation>
    </message>
    <message>
        <source>a compartment, vents to a room</source>
        <translation>adran, awyrellau i ystafell</translation>
    </message>
    <message>
        <source>a compartment, vents to outside</source>
        <translation>adran, awyrellau i’r tu allan</translation>
    </message>
    <message>
        <source>a door</source>
        <translation>drws</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>anhysbys</translation>
    </message>
    <message>
        <source>straight to outside</source>
        <translation>yn syth i’r tu allan</translation>
    </message>
    <message>
        <source>through one inside wall</source>
        <translation>drwy un wal fewnol</translation>
    </message>
    <message>
        <source>through more inside walls</source>
        <translation>drwy fwy o waliau mewnol</translation>
    </message>
    <message>
        <source>high</source>
        <translation>uchel</translation>
    </message>
    <message>
        <source>low</source>
        <translation>isel</translation>
    </message>
    <message>
        <source>outdoors</source>
        <translation>yn yr awyr agored</translation>
    </message>
    <message>
        <source>beside the appliance</source>
        <translation>wrth ymyl y cyfarpar</translation>
    </message>
    <message>
        <source>elsewhere</source>
        <translation>mewn man arall</translation>
    </message>
    <message>
        <source>England, Wales, Scotland</source>
        <translation>Lloegr, Cymru, yr Alban</translation>
    </message>
    <message>
        <source>BS 6891 before 2015</source>
        <translation>BS 6891 cyn 2015</translation>
    </message>
    <message>
        <source>BS 6891:2015</source>
        <translation>BS 6891:2015</translation>
    </message>
    <message>
        <source>small (IGEM/UP/1B)</source>
        <translation>bach (IGEM/UP/1B)</translation>
    </message>
    <message>
        <source>larger (IGE/UP/1, 1A)</source>
        <translation>mwy (IGE/UP/1, 1A)</translation>
    </message>
    <message>
        <source>high: all heaters at maximum</source>
        <translation>uchel: pob gwresogydd ar ei fwyaf</translation>
    </message>
    <message>
        <source>less than that</source>
        <translation>llai na hynny</translation>
    </message>
    <message>
        <source>examined, in order</source>
        <translation>archwiliwyd, mewn trefn</translation>
    </message>
    <message>
        <source>not in order</source>
        <translation>nid mewn trefn</translation>
    </message>
    <message>
        <source>examined, there is none</source>
        <translation>archwiliwyd, nid oes un</translation>
    </message>
    <message>
        <source>read, in order</source>
        <translation>darllenwyd, mewn trefn</translation>
    </message>
    <message>
        <source>read, to be looked at again</source>
        <translation>darllenwyd, i edrych arno eto</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>ni ddarllenwyd</translation>
    </message>
    <message>
        <source>gas directly disconnected</source>
        <translation>nwy wedi’i ddatgysylltu’n uniongyrchol</translation>
    </message>
    <message>
        <source>purging that harms nothing</source>
        <translation>carthu nad yw’n niweidio dim</translation>
    </message>
    <message>
        <source>work on the appliance</source>
        <translation>gwaith ar y cyfarpar</translation>
    </message>
    <message>
        <source>no meter and no test point</source>
        <translation>dim mesurydd a dim pwynt prawf</translation>
    </message>
    <message>
        <source>meter not accessible</source>
        <translation>ni ellir cyrraedd y mesurydd</translation>
    </message>
    <message>
        <source>meter’s display not working</source>
        <translation>sgrin y mesurydd ddim yn gweithio</translation>
    </message>
    <message>
        <source>does not apply</source>
        <translation>ddim yn berthnasol</translation>
    </message>
    <message>
        <source>not checked</source>
        <translation>heb ei wirio</translation>
    </message>
    <message>
        <source>on</source>
        <translation>ymlaen</translation>
    </message>
    <message>
        <source>off at the control valve</source>
        <translation>i ffwrdd wrth y falf reoli</translation>
    </message>
    <message>
        <source>no credit</source>
        <translation>dim credyd</translation>
    </message>
    <message>
        <source>meter removed</source>
        <translation>mesurydd wedi’i dynnu</translation>
    </message>
    <message>
        <source>premises empty, gas off</source>
        <translation>eiddo gwag, nwy i ffwrdd</translation>
    </message>
    <message>
        <source>inspected</source>
        <translation>archwiliwyd</translation>
    </message>
    <message>
        <source>visual check only</source>
        <translation>gwiriad gweledol yn unig</translation>
    </message>
    <message>
        <source>not inspected</source>
        <translation>heb ei archwilio</translation>
    </message>
    <message>
        <source>none of it</source>
        <translation>dim ohono</translation>
    </message>
    <message>
        <source>seen through its hatches</source>
        <translation>gwelwyd drwy ei agoriadau archwilio</translation>
    </message>
    <message>
        <source>seen in part through its hatches</source>
        <translation>gwelwyd yn rhannol drwy ei agoriadau archwilio</translation>
    </message>
    <message>
        <source>without hatches, not seen</source>
        <translation>heb agoriadau archwilio, ni welwyd</translation>
    </message>
    <message>
        <source>none found</source>
        <translation>ni chanfuwyd dim</translation>
    </message>
    <message>
        <source>found</source>
        <translation>canfuwyd</translation>
    </message>
    <message>
        <source>a replacement</source>
        <translation>un newydd yn lle’r hen</translation>
    </message>
    <message>
        <source>an existing one, moved</source>
        <translation>un presennol, wedi’i symud</translation>
    </message>
    <message>
        <source>flue-gas heat recovery</source>
        <translation>adfer gwres nwyon ffliw</translation>
    </message>
    <message>
        <source>weather compensation</source>
        <translation>digolledu tywydd</translation>
    </message>
    <message>
        <source>load compensation</source>
        <translation>digolledu llwyth</translation>
    </message>
    <message>
        <source>smart thermostat with automation and optimisation</source>
        <translation>thermostat clyfar gydag awtomeiddio ac optimeiddio</translation>
    </message>
    <message>
        <source>an inside drain or stack</source>
        <translation>draen neu bibell bridd fewnol</translation>
    </message>
    <message>
        <source>an outside drain or gully</source>
        <translation>draen neu gwli allanol</translation>
    </message>
    <message>
        <source>a soakaway</source>
        <translation>ffos gerrig</translation>
    </message>
    <message>
        <source>a pump</source>
        <translation>pwmp</translation>
    </message>
    <message>
        <source>yearly service</source>
        <translation>gwasanaeth blynyddol</translation>
    </message>
    <message>
        <source>breakdown</source>
        <translation>torri i lawr</translation>
    </message>
    <message>
        <source>after a repair</source>
        <translation>ar ôl atgyweiriad</translation>
    </message>
    <message>
        <source>fitted, tested, works</source>
        <translation>wedi’i osod, wedi’i brofi, yn gweithio</translation>
    </message>
    <message>
        <source>fitted, does not work</source>
        <translation>wedi’i osod, ddim yn gweithio</translation>
    </message>
    <message>
        <source>fitted, not tested</source>
        <translation>wedi’i osod, heb ei brofi</translation>
    </message>
    <message>
        <source>given</source>
        <translation>rhoddwyd</translation>
    </message>
    <message>
        <source>refused</source>
        <translation>gwrthodwyd</translation>
    </message>
    <message>
        <source>nobody to ask</source>
        <translation>neb i ofyn iddo</translation>
    </message>
    <message>
        <source>turned off at its own valve</source>
        <translation>wedi’i ddiffodd wrth ei falf ei hun</translation>
    </message>
    <message>
        <source>turned off at the emergency control valve</source>
        <translation>wedi’i ddiffodd wrth y falf rheoli argyfwng</translation>
    </message>
    <message>
        <source>put right at once</source>
        <translation>unionwyd ar unwaith</translation>
    </message>
    <message>
        <source>not made safe</source>
        <translation>ni wnaed yn ddiogel</translation>
    </message>
    <message>
        <source>on, the appliance off</source>
        <translation>ymlaen, y cyfarpar i ffwrdd</translation>
    </message>
    <message>
        <source>signed for</source>
        <translation>llofnodwyd amdano</translation>
    </message>
    <message>
        <source>not present, copy left</source>
        <translation>ddim yn bresennol, gadawyd copi</translation>
    </message>
    <message>
        <source>design</source>
        <translation>dyluniad</translation>
    </message>
    <message>
        <source>construction</source>
        <translation>adeiladwaith</translation>
    </message>
    <message>
        <source>manner of installation</source>
        <translation>dull gosod</translation>
    </message>
    <message>
        <source>modification</source>
        <translation>addasiad</translation>
    </message>
    <message>
        <source>servicing</source>
        <translation>gwasanaethu</translation>
    </message>
    <message>
        <source>in the room</source>
        <translation>yn yr ystafell</translation>
    </message>
    <message>
        <source>in order</source>
        <translation>mewn trefn</translation>
    </message>
    <message>
        <source>Landlord&apos;s gas safety check</source>
        <translation>Archwiliad diogelwch nwy landlord</translation>
    </message>
    <message>
        <source>Home owner&apos;s gas safety check</source>
        <translation>Archwiliad diogelwch nwy perchennog cartref</translation>
    </message>
    <message>
        <source>Installation and commissioning of an appliance</source>
        <translation>Gosod a chomisiynu cyfarpar</translation>
    </message>
    <message>
        <source>Service or repair</source>
        <translation>Gwasanaeth neu atgyweiriad</translation>
    </message>
    <message>
        <source>New or altered pipework</source>
        <translation>Pibellau newydd neu wedi’u newid</translation>
    </message>
    <message>
        <source>Pipework beyond the small domestic</source>
        <translation>Pibellau y tu hwnt i’r gosodiad cartref bach</translation>
    </message>
    <message>
        <source>Investigation of CO or fumes in a room</source>
        <translation>Ymchwilio i CO neu fygdarth mewn ystafell</translation>
    </message>
    <message>
        <source>Unsafe situation</source>
        <translation>Sefyllfa anniogel</translation>
    </message>
    <message>
        <source>Gas on arrival</source>
        <translation>Nwy wrth gyrraedd</translation>
    </message>
    <message>
        <source>What remains to be done</source>
        <translation>Yr hyn sydd ar ôl i’w wneud</translation>
    </message>
    <message>
        <source>Responsible person told what was found</source>
        <translation>Dywedwyd wrth y person cyfrifol beth a ganfuwyd</translation>
    </message>
    <message>
        <source>Emergency notice at the meter</source>
        <translation>Hysbysiad argyfwng wrth y mesurydd</translation>
    </message>
    <message>
        <source>Main bonding seen at the meter</source>
        <translation>Prif fondio wedi’i weld wrth y mesurydd</translation>
    </message>
    <message>
        <source>Combustion analyser</source>
        <translation>Dadansoddydd hylosgi</translation>
    </message>
    <message>
        <source>Gauge for the appliances&apos; pressures</source>
        <translation>Medrydd ar gyfer pwyseddau’r cyfarpar</translation>
    </message>
    <message>
        <source>Operation and controls demonstrated</source>
        <translation>Dangoswyd y gweithrediad a’r rheolyddion</translation>
    </message>
    <message>
        <source>Maker&apos;s instructions left with the owner or occupier</source>
        <translation>Gadawyd cyfarwyddiadau’r gwneuthurwr gyda’r perchennog neu’r deiliad</translation>
    </message>
    <message>
        <source>Reference readings explained</source>
        <translation>Eglurwyd y darlleniadau cyfeirio</translation>
    </message>
    <message>
        <source>Advice given</source>
        <translation>Cyngor a roddwyd</translation>
    </message>
    <message>
        <source>Work completed on</source>
        <translation>Cwblhawyd y gwaith ar</translation>
    </message>
    <message>
        <source>Building regulations notification</source>
        <translation>Hysbysiad rheoliadau adeiladu</translation>
    </message>
    <message>
        <source>Information on operating and maintaining handed over</source>
        <translation>Trosglwyddwyd gwybodaeth am weithredu a chynnal a chadw</translation>
    </message>
    <message>
        <source>Who called, and why</source>
        <translation>Pwy alwodd, a pham</translation>
    </message>
    <message>
        <source>Reference of the emergency service or LPG supplier</source>
        <translation>Cyfeirnod y gwasanaeth argyfwng neu’r cyflenwr LPG</translation>
    </message>
    <message>
        <source>Alarm that went off: make and type</source>
        <translation>Larwm a seiniodd: gwneuthuriad a math</translation>
    </message>
    <message>
        <source>Alarm to be replaced by</source>
        <translation>Newid y larwm erbyn</translation>
    </message>
    <message>
        <source>Highest reading that the alarm shows</source>
        <translation>Darlleniad uchaf y mae’r larwm yn ei ddangos</translation>
    </message>
    <message>
        <source>Symptoms, and whose</source>
        <translation>Symptomau, a phwy sydd â nhw</translation>
    </message>
    <message>
        <source>Medical advice urged on those unwell</source>
        <translation>Anogwyd cyngor meddygol i’r rhai sy’n sâl</translation>
    </message>
    <message>
        <source>Who was in the premises</source>
        <translation>Pwy oedd yn yr eiddo</translation>
    </message>
    <message>
        <source>Weather and wind</source>
        <translation>Tywydd a gwynt</translation>
    </message>
    <message>
        <source>Adjoining premises and shared flues</source>
        <translation>Eiddo cyffiniol a ffliwiau a rennir</translation>
    </message>
    <message>
        <source>Appliances of other fuels</source>
        <translation>Cyfarpar tanwyddau eraill</translation>
    </message>
    <message>
        <source>Cause found</source>
        <translation>Achos a ganfuwyd</translation>
    </message>
    <message>
        <source>What was done about it</source>
        <translation>Yr hyn a wnaed yn ei gylch</translation>
    </message>
    <message>
        <source>How the gas was left</source>
        <translation>Sut y gadawyd y nwy</translation>
    </message>
    <message>
        <source>What was done with it</source>
        <translation>Yr hyn a wnaed ag ef</translation>
    </message>
    <message>
        <source>Why it was not inspected</source>
        <translation>Pam na chafodd ei archwilio</translation>
    </message>
    <message>
        <source>Checked on that day</source>
        <translation>Gwiriwyd y diwrnod hwnnw</translation>
    </message>
    <message>
        <source>Last check, or the deadline it counted for</source>
        <translation>Archwiliad diwethaf, neu’r dyddiad terfyn yr oedd yn cyfrif ar ei gyfer</translation>
    </message>
    <message>
        <source>Location suits it</source>
        <translation>Mae’r lleoliad yn addas iddo</translation>
    </message>
    <message>
        <source>Stable and secure</source>
        <translation>Sefydlog a chadarn</translation>
    </message>
    <message>
        <source>Gas connection and its valve</source>
        <translation>Cysylltiad nwy a’i falf</translation>
    </message>
    <message>
        <source>No signs of heat, soot or incomplete combustion</source>
        <translation>Dim arwyddion o wres, huddygl na hylosgi anghyflawn</translation>
    </message>
    <message>
        <source>Clearances and compartment</source>
        <translation>Cliriadau ac adran</translation>
    </message>
    <message>
        <source>Route of the flue</source>
        <translation>Llwybr y ffliw</translation>
    </message>
    <message>
        <source>Flue along its whole length: condition, joints, fall</source>
        <translation>Ffliw ar ei hyd cyfan: cyflwr, uniadau, goledd</translation>
    </message>
    <message>
        <source>Terminal: place and condition</source>
        <translation>Terfynell: lle a chyflwr</translation>
    </message>
    <message>
        <source>Flue in a void</source>
        <translation>Ffliw mewn gwagle</translation>
    </message>
    <message>
        <source>What could not be seen of the flue</source>
        <translation>Yr hyn na ellid ei weld o’r ffliw</translation>
    </message>
    <message>
        <source>Ventilation clear and of the size needed</source>
        <translation>Awyru’n glir ac o’r maint sydd ei angen</translation>
    </message>
    <message>
        <source>Flue flow test</source>
        <translation>Prawf llif y ffliw</translation>
    </message>
    <message>
        <source>Spillage test</source>
        <translation>Prawf gorlif nwyon</translation>
    </message>
    <message>
        <source>Spillage test with fans running</source>
        <translation>Prawf gorlif nwyon gyda gwyntyllau’n rhedeg</translation>
    </message>
    <message>
        <source>Case and its seal</source>
        <translation>Casyn a’i sêl</translation>
    </message>
    <message>
        <source>Gas rate, as read</source>
        <translation>Cyfradd nwy, fel y’i darllenwyd</translation>
    </message>
    <message>
        <source>Heat input, as worked out from it</source>
        <translation>Mewnbwn gwres, wedi’i gyfrifo ohoni</translation>
    </message>
    <message>
        <source>That heat input is</source>
        <translation>Mae’r mewnbwn gwres hwnnw yn</translation>
    </message>
    <message>
        <source>Flame supervision and other safety devices</source>
        <translation>Goruchwyliaeth fflam a dyfeisiau diogelwch eraill</translation>
    </message>
    <message>
        <source>Flame picture</source>
        <translation>Golwg y fflam</translation>
    </message>
    <message>
        <source>Condensate drain and trap</source>
        <translation>Draen a thrap cyddwysiad</translation>
    </message>
    <message>
        <source>Pressure relief and overheat cut-out</source>
        <translation>Rhyddhad pwysedd a thorbwynt gorboethi</translation>
    </message>
    <message>
        <source>Serviced at this visit</source>
        <translation>Gwasanaethwyd ar yr ymweliad hwn</translation>
    </message>
    <message>
        <source>Check included the matters of regulation 26(9)(a) to (d)</source>
        <translation>Roedd yr archwiliad yn cynnwys materion regulation 26(9)(a) to (d) (rheoliad 26(9)(a) i (d))</translation>
    </message>
    <message>
        <source>Safety defects</source>
        <translation>Diffygion diogelwch</translation>
    </message>
    <message>
        <source>The defects found</source>
        <translation>Y diffygion a ganfuwyd</translation>
    </message>
    <message>
        <source>Remedial action taken</source>
        <translation>Camau adfer a gymerwyd</translation>
    </message>
    <message>
        <source>Action taken on</source>
        <translation>Gweithredwyd ar</translation>
    </message>
    <message>
        <source>Action taken by</source>
        <translation>Gweithredwyd gan</translation>
    </message>
    <message>
        <source>Safe to use</source>
        <translation>Safe to use (diogel i’w ddefnyddio)</translation>
    </message>
    <message>
        <source>New or replacement</source>
        <translation>Newydd neu’n disodli</translation>
    </message>
    <message>
        <source>Time control</source>
        <translation>Rheoli amser</translation>
    </message>
    <message>
        <source>Room temperature control</source>
        <translation>Rheoli tymheredd ystafell</translation>
    </message>
    <message>
        <source>Boiler interlock</source>
        <translation>Cyd-glo’r boeler</translation>
    </message>
    <message>
        <source>Heating zones</source>
        <translation>Parthau gwresogi</translation>
    </message>
    <message>
        <source>Thermostatic radiator valves</source>
        <translation>Falfiau rheiddiadur thermostatig</translation>
    </message>
    <message>
        <source>Cylinder thermostat</source>
        <translation>Thermostat y silindr</translation>
    </message>
    <message>
        <source>Automatic bypass</source>
        <translation>Ffordd osgoi awtomatig</translation>
    </message>
    <message>
        <source>Further measure of a combination boiler</source>
        <translation>Mesur pellach boeler cyfunol</translation>
    </message>
    <message>
        <source>System cleaned and flushed</source>
        <translation>System wedi’i glanhau a’i fflysio</translation>
    </message>
    <message>
        <source>Cleaner used, and how it was flushed</source>
        <translation>Glanhawr a ddefnyddiwyd, a sut y fflysiwyd</translation>
    </message>
    <message>
        <source>Inhibitor and its quantity</source>
        <translation>Atalydd a’i faint</translation>
    </message>
    <message>
        <source>Filter in the system</source>
        <translation>Hidlydd yn y system</translation>
    </message>
    <message>
        <source>Hardness of the mains water, ppm</source>
        <translation>Caledwch dŵr y prif gyflenwad, ppm</translation>
    </message>
    <message>
        <source>Scale reducer</source>
        <translation>Lleihäwr cen</translation>
    </message>
    <message>
        <source>System&apos;s water pressure, cold</source>
        <translation>Pwysedd dŵr y system, oer</translation>
    </message>
    <message>
        <source>Flow temperature by design</source>
        <translation>Tymheredd llif yn ôl y dyluniad</translation>
    </message>
    <message>
        <source>Heating, flow temperature</source>
        <translation>Gwresogi, tymheredd llif</translation>
    </message>
    <message>
        <source>Heating, return temperature</source>
        <translation>Gwresogi, tymheredd dychwelyd</translation>
    </message>
    <message>
        <source>Hot water, gas rate</source>
        <translation>Dŵr poeth, cyfradd nwy</translation>
    </message>
    <message>
        <source>Hot water, inlet pressure at its highest rate</source>
        <translation>Dŵr poeth, pwysedd mewnfa ar ei gyfradd uchaf</translation>
    </message>
    <message>
        <source>Pipe sizing confirmed</source>
        <translation>Maint y pibellau wedi’i gadarnhau</translation>
    </message>
    <message>
        <source>Condensate: route, material, insulation</source>
        <translation>Cyddwysiad: llwybr, deunydd, ynysiad</translation>
    </message>
    <message>
        <source>Condensate ends in</source>
        <translation>Mae’r cyddwysiad yn gorffen yn</translation>
    </message>
    <message>
        <source>Condensate trap filled</source>
        <translation>Trap cyddwysiad wedi’i lenwi</translation>
    </message>
    <message>
        <source>Installed and commissioned by the maker&apos;s instructions</source>
        <translation>Gosodwyd a chomisiynwyd yn ôl cyfarwyddiadau’r gwneuthurwr</translation>
    </message>
    <message>
        <source>Service interval advised</source>
        <translation>Cyfnod gwasanaethu a gynghorwyd</translation>
    </message>
    <message>
        <source>Kind of service</source>
        <translation>Math o wasanaeth</translation>
    </message>
    <message>
        <source>Fault as told</source>
        <translation>Nam fel y’i disgrifiwyd</translation>
    </message>
    <message>
        <source>Work done by the maker&apos;s schedule</source>
        <translation>Gwaith a wnaed yn ôl rhestr y gwneuthurwr</translation>
    </message>
    <message>
        <source>Parts fitted</source>
        <translation>Rhannau a osodwyd</translation>
    </message>
    <message>
        <source>Combustion adjusted</source>
        <translation>Addaswyd y hylosgi</translation>
    </message>
    <message>
        <source>CO before, highest rate</source>
        <translation>CO cyn hynny, cyfradd uchaf</translation>
    </message>
    <message>
        <source>CO₂ before, highest rate</source>
        <translation>CO₂ cyn hynny, cyfradd uchaf</translation>
    </message>
    <message>
        <source>CO before, lowest rate</source>
        <translation>CO cyn hynny, cyfradd isaf</translation>
    </message>
    <message>
        <source>CO₂ before, lowest rate</source>
        <translation>CO₂ cyn hynny, cyfradd isaf</translation>
    </message>
    <message>
        <source>Expansion vessel and system pressure</source>
        <translation>Llestr ehangu a phwysedd y system</translation>
    </message>
    <message>
        <source>Inhibitor checked</source>
        <translation>Gwiriwyd yr atalydd</translation>
    </message>
    <message>
        <source>Next service due</source>
        <translation>Gwasanaeth nesaf yn ddyledus</translation>
    </message>
    <message>
        <source>Name of the room</source>
        <translation>Enw’r ystafell</translation>
    </message>
    <message>
        <source>CO alarm</source>
        <translation>Larwm CO</translation>
    </message>
    <message>
        <source>CO alarm to be replaced by</source>
        <translation>Newid y larwm CO erbyn</translation>
    </message>
    <message>
        <source>Smoke alarm</source>
        <translation>Larwm mwg</translation>
    </message>
    <message>
        <source>Smoke alarm to be replaced by</source>
        <translation>Newid y larwm mwg erbyn</translation>
    </message>
    <message>
        <source>About the alarms</source>
        <translation>Am y larymau</translation>
    </message>
    <message>
        <source>What was found in the room</source>
        <translation>Yr hyn a ganfuwyd yn yr ystafell</translation>
    </message>
    <message>
        <source>Gas is escaping</source>
        <translation>Mae nwy’n gollwng</translation>
    </message>
    <message>
        <source>Responsible person, and as what</source>
        <translation>Person cyfrifol, ac yn rhinwedd beth</translation>
    </message>
    <message>
        <source>Permission to make it safe</source>
        <translation>Caniatâd i’w wneud yn ddiogel</translation>
    </message>
    <message>
        <source>Made safe by</source>
        <translation>Gwnaed yn ddiogel drwy</translation>
    </message>
    <message>
        <source>How it was made safe</source>
        <translation>Sut y’i gwnaed yn ddiogel</translation>
    </message>
    <message>
        <source>Label fixed</source>
        <translation>Label wedi’i osod</translation>
    </message>
    <message>
        <source>Number of the label</source>
        <translation>Rhif y label</translation>
    </message>
    <message>
        <source>Who refused</source>
        <translation>Pwy wrthododd</translation>
    </message>
    <message>
        <source>Refusal, in their words</source>
        <translation>Y gwrthodiad, yn ei eiriau ei hun</translation>
    </message>
    <message>
        <source>Supply was left</source>
        <translation>Gadawyd y cyflenwad</translation>
    </message>
    <message>
        <source>Who else was told</source>
        <translation>Pwy arall a hysbyswyd</translation>
    </message>
    <message>
        <source>Told at</source>
        <translation>Hysbyswyd am</translation>
    </message>
    <message>
        <source>Reference that they gave</source>
        <translation>Cyfeirnod a roddasant</translation>
    </message>
    <message>
        <source>Work needed to put it right</source>
        <translation>Gwaith sydd ei angen i’w unioni</translation>
    </message>
    <message>
        <source>Notice received</source>
        <translation>Hysbysiad wedi’i dderbyn</translation>
    </message>
    <message>
        <source>Notice received by</source>
        <translation>Derbyniwyd yr hysbysiad gan</translation>
    </message>
    <message>
        <source>Where the copy was left</source>
        <translation>Lle gadawyd y copi</translation>
    </message>
    <message>
        <source>To be reported under RIDDOR 11(2)</source>
        <translation>I’w adrodd o dan RIDDOR 11(2)</translation>
    </message>
    <message>
        <source>Because of its</source>
        <translation>Oherwydd ei</translation>
    </message>
    <message>
        <source>Known of since</source>
        <translation>Yn hysbys ers</translation>
    </message>
    <message>
        <source>Reported to HSE on</source>
        <translation>Adroddwyd i HSE ar</translation>
    </message>
    <message>
        <source>Reference of the report</source>
        <translation>Cyfeirnod yr adroddiad</translation>
    </message>
    <message>
        <source>Who installed or serviced it, and when</source>
        <translation>Pwy a’i gosododd neu a’i gwasanaethodd, a phryd</translation>
    </message>
    <message>
        <source>Persons affected</source>
        <translation>Personau yr effeithiwyd arnynt</translation>
    </message>
    <message>
        <source>edition not chosen</source>
        <translation>argraffiad heb ei ddewis</translation>
    </message>
    <message>
        <source>registration %1</source>
        <translation>cofrestriad %1</translation>
    </message>
    <message>
        <source>Gas Safety (Installation and Use) Regulations 1998, regulation 36(3)(c)</source>
        <translation>Gas Safety (Installation and Use) Regulations 1998, regulation 36(3)(c) (rheoliadau diogelwch nwy, gosod a defnyddio, rheoliad 36(3)(c))</translation>
    </message>
    <message>
        <source>Gas Safety (Installation and Use) Regulations 1998, regulation 26(9)</source>
        <translation>Gas Safety (Installation and Use) Regulations 1998, regulation 26(9) (rheoliadau diogelwch nwy, gosod a defnyddio, rheoliad 26(9))</translation>
    </message>
    <message>
        <source>Gas Safety (Installation and Use) Regulations 1998, regulations 26(9) and 33; BS 6798</source>
        <translation>Gas Safety (Installation and Use) Regulations 1998, regulations 26(9) and 33 (rheoliadau diogelwch nwy, gosod a defnyddio, rheoliadau 26(9) a 33); BS 6798</translation>
    </message>
    <message>
        <source>IGEM/G/11</source>
        <translation>IGEM/G/11</translation>
    </message>
    <message>
        <source>BS 7967; IGEM/G/11 Supplement 1</source>
        <translation>BS 7967; IGEM/G/11 Supplement 1</translation>
    </message>
    <message>
        <source>RIDDOR 2013, regulation 11(2)</source>
        <translation>RIDDOR 2013, regulation 11(2) (rheoliad 11(2))</translation>
    </message>
    <message>
        <source>Building Regulations 2010, regulations 20 and 40</source>
        <translation>Building Regulations 2010, regulations 20 and 40 (rheoliadau adeiladu, rheoliadau 20 a 40)</translation>
    </message>
    <message>
        <source>IGE/UP/1, IGE/UP/1A</source>
        <translation>IGE/UP/1, IGE/UP/1A</translation>
    </message>
    <message>
        <source>— none given</source>
        <translation>— dim</translation>
    </message>
    <message>
        <source>revision %1</source>
        <translation>diwygiad %1</translation>
    </message>
    <message>
        <source>digest</source>
        <translation>crynodeb</translation>
    </message>
    <message>
        <source>Location</source>
        <translation>Lleoliad</translation>
    </message>
    <message>
        <source>Heat, soot, distress</source>
        <translation>Gwres, huddygl, traul</translation>
    </message>
    <message>
        <source>Clearances</source>
        <translation>Cliriadau</translation>
    </message>
    <message>
        <source>Gas connection</source>
        <translation>Cysylltiad nwy</translation>
    </message>
    <message>
        <source>Flue, its whole length</source>
        <translation>Ffliw, ei hyd cyfan</translation>
    </message>
    <message>
        <source>Terminal</source>
        <translation>Terfynell</translation>
    </message>
    <message>
        <source>Not seen of the flue</source>
        <translation>Heb ei weld o’r ffliw</translation>
    </message>
    <message>
        <source>Ventilation</source>
        <translation>Awyru</translation>
    </message>
    <message>
        <source>Spillage, fans running</source>
        <translation>Gorlif, gwyntyllau’n rhedeg</translation>
    </message>
    <message>
        <source>Case and seal</source>
        <translation>Casyn a sêl</translation>
    </message>
    <message>
        <source>Safety devices</source>
        <translation>Dyfeisiau diogelwch</translation>
    </message>
    <message>
        <source>Condensate</source>
        <translation>Cyddwysiad</translation>
    </message>
    <message>
        <source>Relief, overheat</source>
        <translation>Rhyddhad, gorboethi</translation>
    </message>
    <message>
        <source>Serviced as well</source>
        <translation>Gwasanaethwyd hefyd</translation>
    </message>
    <message>
        <source>Gas rate</source>
        <translation>Cyfradd nwy</translation>
    </message>
    <message>
        <source>Heat input</source>
        <translation>Mewnbwn gwres</translation>
    </message>
    <message>
        <source>Inlet, working</source>
        <translation>Mewnfa, gweithio</translation>
    </message>
    <message>
        <source>Inlet, standing</source>
        <translation>Mewnfa, sefydlog</translation>
    </message>
    <message>
        <source>Meter, standing</source>
        <translation>Mesurydd, sefydlog</translation>
    </message>
    <message>
        <source>Meter, working</source>
        <translation>Mesurydd, gweithio</translation>
    </message>
    <message>
        <source>By the maker’s instructions</source>
        <translation>Yn ôl cyfarwyddiadau’r gwneuthurwr</translation>
    </message>
    <message>
        <source>Expansion vessel</source>
        <translation>Llestr ehangu</translation>
    </message>
    <message>
        <source>Inhibitor</source>
        <translation>Atalydd</translation>
    </message>
    <message>
        <source>Combination boiler, further</source>
        <translation>Boeler cyfunol, pellach</translation>
    </message>
    <message>
        <source>Mains hardness, ppm</source>
        <translation>Caledwch y dŵr, ppm</translation>
    </message>
    <message>
        <source>Water pressure, cold</source>
        <translation>Pwysedd dŵr, oer</translation>
    </message>
    <message>
        <source>Demonstrated</source>
        <translation>Dangoswyd</translation>
    </message>
    <message>
        <source>Instructions left</source>
        <translation>Gadawyd cyfarwyddiadau</translation>
    </message>
    <message>
        <source>Information handed over</source>
        <translation>Trosglwyddwyd gwybodaeth</translation>
    </message>
    <message>
        <source>Emergency reference</source>
        <translation>Cyfeirnod argyfwng</translation>
    </message>
    <message>
        <source>Medical advice urged</source>
        <translation>Anogwyd cyngor meddygol</translation>
    </message>
    <message>
        <source>Alarm, make and type</source>
        <translation>Larwm, gwneuthuriad a math</translation>
    </message>
    <message>
        <source>Highest on the alarm</source>
        <translation>Uchaf ar y larwm</translation>
    </message>
    <message>
        <source>Tested with</source>
        <translation>Profwyd â</translation>
    </message>
    <message>
        <source>Gauge&apos;s kind</source>
        <translation>Math o fedrydd</translation>
    </message>
    <message>
        <source>Weaker parts taken off</source>
        <translation>Tynnwyd rhannau gwannach</translation>
    </message>
    <message>
        <source>Most operating</source>
        <translation>Gweithredu, mwyaf</translation>
    </message>
    <message>
        <source>Most incidental</source>
        <translation>Achlysurol, mwyaf</translation>
    </message>
    <message>
        <source>Most of the supply</source>
        <translation>Cyflenwad, mwyaf</translation>
    </message>
    <message>
        <source>Well ventilated</source>
        <translation>Wedi’i awyru’n dda</translation>
    </message>
    <message>
        <source>Gauge zeroed</source>
        <translation>Medrydd wedi’i seroi</translation>
    </message>
    <message>
        <source>Smell during test</source>
        <translation>Arogl yn ystod y prawf</translation>
    </message>
    <message>
        <source>Volume passed at meter</source>
        <translation>Cyfaint drwy’r mesurydd</translation>
    </message>
    <message>
        <source>All flames steady</source>
        <translation>Pob fflam yn sefydlog</translation>
    </message>
    <message>
        <source>Test point proved (fluid)</source>
        <translation>Pwynt prawf wedi’i brofi (hylif)</translation>
    </message>
    <message>
        <source>Disturbed joints proved</source>
        <translation>Uniadau a darfwyd wedi’u profi</translation>
    </message>
    <message>
        <source>Standing pressure (meter)</source>
        <translation>Pwysedd sefydlog (mesurydd)</translation>
    </message>
    <message>
        <source>Working pressure (meter)</source>
        <translation>Pwysedd gweithio (mesurydd)</translation>
    </message>
    <message>
        <source>test %1</source>
        <translation>prawf %1</translation>
    </message>
    <message>
        <source>“%1” (can&apos;t be read)</source>
        <translation>“%1” (ni ellir ei ddarllen)</translation>
    </message>
    <message>
        <source>not made: stopped at let-by</source>
        <translation>heb ei wneud: stopiwyd adeg gollwng heibio</translation>
    </message>
    <message>
        <source>no purge needed</source>
        <translation>dim angen carthu</translation>
    </message>
    <message>
        <source>no meter to read</source>
        <translation>dim mesurydd i’w ddarllen</translation>
    </message>
    <message>
        <source>no appliance connected</source>
        <translation>dim cyfarpar wedi’i gysylltu</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>heb ei nodi</translation>
    </message>
    <message>
        <source>not purged</source>
        <translation>heb ei garthu</translation>
    </message>
    <message>
        <source>the gas stays off</source>
        <translation>mae’r nwy’n aros i ffwrdd</translation>
    </message>
    <message>
        <source>not taken</source>
        <translation>heb ei gymryd</translation>
    </message>
    <message>
        <source>appliances not connected</source>
        <translation>cyfarpar heb eu cysylltu</translation>
    </message>
    <message>
        <source>card number not entered</source>
        <translation>rhif cerdyn heb ei nodi</translation>
    </message>
    <message>
        <source>card %1</source>
        <translation>cerdyn %1</translation>
    </message>
    <message>
        <source>name not entered</source>
        <translation>enw heb ei nodi</translation>
    </message>
    <message>
        <source>registration number not entered</source>
        <translation>rhif cofrestru heb ei nodi</translation>
    </message>
    <message>
        <source>Firm</source>
        <translation>Cwmni</translation>
    </message>
    <message>
        <source>electronic</source>
        <translation>electronig</translation>
    </message>
    <message>
        <source>water (U-tube)</source>
        <translation>dŵr (tiwb U)</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation>yn ddyledus %1</translation>
    </message>
    <message>
        <source>%1 (typed in)</source>
        <translation>%1 (wedi’i deipio)</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>mesurydd</translation>
    </message>
    <message>
        <source>not under test</source>
        <translation>ddim dan brawf</translation>
    </message>
    <message>
        <source>The volume was typed in instead of being worked out from this list.</source>
        <translation>Deipiwyd y cyfaint yn lle ei gyfrifo o’r rhestr hon.</translation>
    </message>
    <message>
        <source>—: not entered. The installation volume can&apos;t be worked out from what is known.</source>
        <translation>—: heb ei nodi. Ni ellir cyfrifo cyfaint y gosodiad o’r hyn sy’n hysbys.</translation>
    </message>
    <message>
        <source>Installation volume: meter %1, pipes under test %2, fittings %3.</source>
        <translation>Cyfaint y gosodiad: mesurydd %1, pibellau dan brawf %2, ffitiadau %3.</translation>
    </message>
    <message>
        <source>Who and where</source>
        <translation>Pwy a ble</translation>
    </message>
    <message>
        <source>Date of the work</source>
        <translation>Dyddiad y gwaith</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Offerynnau</translation>
    </message>
    <message>
        <source>Gauges</source>
        <translation>Medryddion</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Offeryn</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Rhif cyfresol</translation>
    </message>
    <message>
        <source>Resolution</source>
        <translation>Cydraniad</translation>
    </message>
    <message>
        <source>Accuracy</source>
        <translation>Cywirdeb</translation>
    </message>
    <message>
        <source>Calibration</source>
        <translation>Graddnodi</translation>
    </message>
    <message>
        <source>—: not entered.</source>
        <translation>—: heb ei nodi.</translation>
    </message>
    <message>
        <source>Installation</source>
        <translation>Gosodiad</translation>
    </message>
    <message>
        <source>Meter&apos;s volume</source>
        <translation>Cyfaint y mesurydd</translation>
    </message>
    <message>
        <source>Meter&apos;s serial number</source>
        <translation>Rhif cyfresol y mesurydd</translation>
    </message>
    <message>
        <source>Where the meter is</source>
        <translation>Lle mae’r mesurydd</translation>
    </message>
    <message>
        <source>Emergency control valve</source>
        <translation>Falf rheoli argyfwng</translation>
    </message>
    <message>
        <source>Operating pressure</source>
        <translation>Pwysedd gweithredu</translation>
    </message>
    <message>
        <source>Supply pressure, most</source>
        <translation>Pwysedd cyflenwi, mwyaf</translation>
    </message>
    <message>
        <source>Pipework</source>
        <translation>Pibellau</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Rhif</translation>
    </message>
    <message>
        <source>From</source>
        <translation>O</translation>
    </message>
    <message>
        <source>Leads to</source>
        <translation>Yn arwain at</translation>
    </message>
    <message>
        <source>Tube</source>
        <translation>Tiwb</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Hyd</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Cyfaint</translation>
    </message>
    <message>
        <source>Volume from</source>
        <translation>Cyfaint o</translation>
    </message>
    <message>
        <source>Installation volume</source>
        <translation>Cyfaint y gosodiad</translation>
    </message>
    <message>
        <source>Settling</source>
        <translation>Sefydlogi</translation>
    </message>
    <message>
        <source>Tightness, second display</source>
        <translation>Tyndra, ail sgrin</translation>
    </message>
    <message>
        <source>—: not made, since let-by was found and stopped the test.</source>
        <translation>—: heb ei wneud, gan i ollwng heibio gael ei ganfod a stopio’r prawf.</translation>
    </message>
    <message>
        <source>No retest with appliances isolated was called for.</source>
        <translation>Nid oedd galw am ailbrawf gyda’r cyfarpar wedi’u hynysu.</translation>
    </message>
    <message>
        <source>What was tested</source>
        <translation>Yr hyn a brofwyd</translation>
    </message>
    <message>
        <source>Readings as taken</source>
        <translation>Darlleniadau fel y’u cymerwyd</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Cam</translation>
    </message>
    <message>
        <source>From (time)</source>
        <translation>O (amser)</translation>
    </message>
    <message>
        <source>To (time)</source>
        <translation>Hyd (amser)</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Dechrau</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Diwedd</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Newid</translation>
    </message>
    <message>
        <source>Smell and safe to touch</source>
        <translation>Arogl a diogel i’w gyffwrdd</translation>
    </message>
    <message>
        <source>Purge</source>
        <translation>Carthu</translation>
    </message>
    <message>
        <source>Method, volume, flame</source>
        <translation>Dull, cyfaint, fflam</translation>
    </message>
    <message>
        <source>Joints and pressures</source>
        <translation>Uniadau a phwyseddau</translation>
    </message>
    <message>
        <source>Not purged, since the gas stays off.</source>
        <translation>Heb ei garthu, gan fod y nwy’n aros i ffwrdd.</translation>
    </message>
    <message>
        <source>Not made, since let-by was found and stopped the test.</source>
        <translation>Heb ei wneud, gan i ollwng heibio gael ei ganfod a stopio’r prawf.</translation>
    </message>
    <message>
        <source>There was a smell of gas.</source>
        <translation>Roedd arogl nwy.</translation>
    </message>
    <message>
        <source>This installation lies outside the standard that it was tested to.</source>
        <translation>Mae’r gosodiad hwn y tu allan i’r safon y profwyd yn ei hôl.</translation>
    </message>
    <message>
        <source>The valve lets by: no tightness test could be made.</source>
        <translation>Mae’r falf yn gollwng heibio: ni ellid gwneud prawf tyndra.</translation>
    </message>
    <message>
        <source>The installation was not found tight. The gas stays off until it is.</source>
        <translation>Ni chafwyd bod y gosodiad yn dynn. Mae’r nwy’n aros i ffwrdd hyd nes y bydd.</translation>
    </message>
    <message>
        <source>The installation was found tight at the last test.</source>
        <translation>Cafwyd bod y gosodiad yn dynn yn y prawf diwethaf.</translation>
    </message>
    <message>
        <source>The installation was found tight.</source>
        <translation>Cafwyd bod y gosodiad yn dynn.</translation>
    </message>
    <message>
        <source>Not yet a pass: something is to be looked at again.</source>
        <translation>Nid yw’n pasio eto: mae rhywbeth i edrych arno eto.</translation>
    </message>
    <message>
        <source>No verdict: the installation was not shown to be tight.</source>
        <translation>Dim dyfarniad: ni ddangoswyd bod y gosodiad yn dynn.</translation>
    </message>
    <message>
        <source>confirmed</source>
        <translation>cadarnhawyd</translation>
    </message>
    <message>
        <source>confirmed %1</source>
        <translation>cadarnhawyd %1</translation>
    </message>
    <message>
        <source>Limits marked confirmed: by %1 from the firm&apos;s own copy, %2.</source>
        <translation>Terfynau wedi’u nodi’n gadarnhawyd: gan %1 o gopi’r cwmni ei hun, %2.</translation>
    </message>
    <message>
        <source>Limits marked confirmed: by %1 from the firm&apos;s own copy.</source>
        <translation>Terfynau wedi’u nodi’n gadarnhawyd: gan %1 o gopi’r cwmni ei hun.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>all tests</source>
        <translation>pob prawf</translation>
    </message>
    <message>
        <source>Also seen to</source>
        <translation>Rhoddwyd sylw hefyd i</translation>
    </message>
    <message>
        <source>Findings, with the limits used</source>
        <translation>Canfyddiadau, gyda’r terfynau a ddefnyddiwyd</translation>
    </message>
    <message>
        <source>What to do first</source>
        <translation>Beth i’w wneud yn gyntaf</translation>
    </message>
    <message>
        <source>landlord’s</source>
        <translation>eiddo’r landlord</translation>
    </message>
    <message>
        <source>tenant’s own</source>
        <translation>eiddo’r tenant</translation>
    </message>
    <message>
        <source>home owner’s</source>
        <translation>eiddo perchennog y cartref</translation>
    </message>
    <message>
        <source>nothing entered</source>
        <translation>dim wedi’i nodi</translation>
    </message>
    <message>
        <source>a safety defect was found</source>
        <translation>canfuwyd diffyg diogelwch</translation>
    </message>
    <message>
        <source>no safety defect was found</source>
        <translation>ni chanfuwyd diffyg diogelwch</translation>
    </message>
    <message>
        <source>declared safe to use</source>
        <translation>datganwyd safe to use (diogel i’w ddefnyddio)</translation>
    </message>
    <message>
        <source>declared not safe to use</source>
        <translation>datganwyd NAD yw’n safe to use (diogel i’w ddefnyddio)</translation>
    </message>
    <message>
        <source>Every appliance was inspected and declared safe to use.</source>
        <translation>Archwiliwyd pob cyfarpar a datganwyd ei fod yn safe to use (diogel i’w ddefnyddio).</translation>
    </message>
    <message>
        <source>Not every appliance is safe to use: see below.</source>
        <translation>Nid yw pob cyfarpar yn safe to use (diogel i’w ddefnyddio): gweler isod.</translation>
    </message>
    <message>
        <source>A reading lies beyond its limit: see the findings.</source>
        <translation>Mae darlleniad y tu hwnt i’w derfyn: gweler y canfyddiadau.</translation>
    </message>
    <message>
        <source>Declared safe to use where inspected, but something is to be looked at: see below.</source>
        <translation>Datganwyd yn safe to use (diogel i’w ddefnyddio) lle’r archwiliwyd, ond mae rhywbeth i edrych arno: gweler isod.</translation>
    </message>
    <message>
        <source>No appliance was inspected.</source>
        <translation>Ni archwiliwyd unrhyw gyfarpar.</translation>
    </message>
    <message>
        <source>found; which was not entered</source>
        <translation>canfuwyd; ni nodwyd pa un</translation>
    </message>
    <message>
        <source>— not entered</source>
        <translation>— heb ei nodi</translation>
    </message>
    <message>
        <source>none needed</source>
        <translation>dim angen</translation>
    </message>
    <message>
        <source>Declared by the engineer</source>
        <translation>Datganwyd gan y peiriannydd</translation>
    </message>
    <message>
        <source>NOT safe to use</source>
        <translation>NOT safe to use (NID yw’n ddiogel i’w ddefnyddio)</translation>
    </message>
    <message>
        <source>Safe to use, by a visual check only</source>
        <translation>Safe to use (diogel i’w ddefnyddio), drwy wiriad gweledol yn unig</translation>
    </message>
    <message>
        <source>— not declared</source>
        <translation>— heb ei ddatgan</translation>
    </message>
    <message>
        <source>Looked at for obvious defects only: nothing was tested or measured.</source>
        <translation>Edrychwyd am ddiffygion amlwg yn unig: ni phrofwyd ac ni fesurwyd dim.</translation>
    </message>
    <message>
        <source>(a) effectiveness of the flue</source>
        <translation>(a) effeithiolrwydd y ffliw</translation>
    </message>
    <message>
        <source>(b) supply of combustion air</source>
        <translation>(b) cyflenwad aer hylosgi</translation>
    </message>
    <message>
        <source>(c) operating pressure</source>
        <translation>(c) pwysedd gweithredu</translation>
    </message>
    <message>
        <source>(c) heat input</source>
        <translation>(c) mewnbwn gwres</translation>
    </message>
    <message>
        <source>(ca) combustion performance, in place of (c)</source>
        <translation>(ca) perfformiad hylosgi, yn lle (c)</translation>
    </message>
    <message>
        <source>(d) operation, so that it works safely</source>
        <translation>(d) gweithrediad, fel ei fod yn gweithio’n ddiogel</translation>
    </message>
    <message>
        <source>to be looked at again</source>
        <translation>i edrych arno eto</translation>
    </message>
    <message>
        <source>there is none</source>
        <translation>nid oes un</translation>
    </message>
    <message>
        <source>Visual check only: these matters were not examined.</source>
        <translation>Gwiriad gweledol yn unig: ni archwiliwyd y materion hyn.</translation>
    </message>
    <message>
        <source>Confirmed by the engineer: the check included the matters of regulation 26(9)(a) to (d).</source>
        <translation>Cadarnhawyd gan y peiriannydd: roedd yr archwiliad yn cynnwys materion regulation 26(9)(a) to (d) (rheoliad 26(9)(a) i (d)).</translation>
    </message>
    <message>
        <source>The engineer says: the check did not include all matters of regulation 26(9)(a) to (d).</source>
        <translation>Dywed y peiriannydd: NID oedd yr archwiliad yn cynnwys holl faterion regulation 26(9)(a) to (d) (rheoliad 26(9)(a) i (d)).</translation>
    </message>
    <message>
        <source>Not confirmed by the engineer.</source>
        <translation>Heb ei gadarnhau gan y peiriannydd.</translation>
    </message>
    <message>
        <source>Combustion</source>
        <translation>Hylosgi</translation>
    </message>
    <message>
        <source>O₂</source>
        <translation>O₂</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio, worked out</source>
        <translation>Cymhareb CO/CO₂, wedi’i chyfrifo</translation>
    </message>
    <message>
        <source>before, highest rate</source>
        <translation>cyn hynny, cyfradd uchaf</translation>
    </message>
    <message>
        <source>before, lowest rate</source>
        <translation>cyn hynny, cyfradd isaf</translation>
    </message>
    <message>
        <source>—: not read, or not worked out.</source>
        <translation>—: heb ei ddarllen, neu heb ei gyfrifo.</translation>
    </message>
    <message>
        <source>Appliances and flues</source>
        <translation>Cyfarpar a ffliwiau</translation>
    </message>
    <message>
        <source>Appliance</source>
        <translation>Cyfarpar</translation>
    </message>
    <message>
        <source>Make and model</source>
        <translation>Gwneuthuriad a model</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Ble</translation>
    </message>
    <message>
        <source>Flue</source>
        <translation>Ffliw</translation>
    </message>
    <message>
        <source>Whose</source>
        <translation>Eiddo pwy</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Yr hyn a wnaed</translation>
    </message>
    <message>
        <source>GC number</source>
        <translation>Rhif GC</translation>
    </message>
    <message>
        <source>Input on the plate</source>
        <translation>Mewnbwn ar y plât</translation>
    </message>
    <message>
        <source>Matters of regulation 26(9)</source>
        <translation>Materion regulation 26(9) (rheoliad 26(9))</translation>
    </message>
    <message>
        <source>Examined</source>
        <translation>Archwiliwyd</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Canlyniad</translation>
    </message>
    <message>
        <source>Seen and read</source>
        <translation>Gwelwyd a darllenwyd</translation>
    </message>
    <message>
        <source>—: nothing was read for it.</source>
        <translation>—: ni ddarllenwyd dim ar ei gyfer.</translation>
    </message>
    <message>
        <source>%1 or %2: keep the first</source>
        <translation>%1 neu %2: cadwch y cyntaf</translation>
    </message>
    <message>
        <source>%1 by the checks kept here, %2 by the last check as entered: look again, keep the earlier</source>
        <translation>%1 yn ôl y gwiriadau a gedwir yma, %2 yn ôl y gwiriad diwethaf fel y’i cofnodwyd: edrychwch eto, cadwch y cynharaf</translation>
    </message>
    <message>
        <source>Dates of the check</source>
        <translation>Dyddiadau’r archwiliad</translation>
    </message>
    <message>
        <source>Appliance and its flue</source>
        <translation>Cyfarpar a’i ffliw</translation>
    </message>
    <message>
        <source>Checked on</source>
        <translation>Gwiriwyd ar</translation>
    </message>
    <message>
        <source>Was due by</source>
        <translation>Roedd yn ddyledus erbyn</translation>
    </message>
    <message>
        <source>Deadline kept</source>
        <translation>Cadwyd y dyddiad terfyn</translation>
    </message>
    <message>
        <source>Next check due by</source>
        <translation>Archwiliad nesaf yn ddyledus erbyn</translation>
    </message>
    <message>
        <source>no, anew</source>
        <translation>na, o’r newydd</translation>
    </message>
    <message>
        <source>— not checked</source>
        <translation>— heb ei wirio</translation>
    </message>
    <message>
        <source>—: not known here, or does not apply. A check in the two months that end with its deadline keeps the date (regulation 36A(1)); another starts twelve months anew.</source>
        <translation>—: heb fod yn hysbys yma, neu ddim yn berthnasol. Mae archwiliad yn y ddau fis sy’n dod i ben ar ei ddyddiad terfyn yn cadw’r dyddiad (regulation 36A(1), rheoliad 36A(1)); mae un arall yn dechrau deuddeg mis o’r newydd.</translation>
    </message>
    <message>
        <source>An existing tenant has a copy by %1, a new tenant before moving in (regulation 36(6)).</source>
        <translation>Mae tenant presennol yn cael copi erbyn %1, tenant newydd cyn symud i mewn (regulation 36(6), rheoliad 36(6)).</translation>
    </message>
    <message>
        <source>The landlord keeps this record until two further checks of the same appliance or flue have been made, and two years at least.</source>
        <translation>Mae’r landlord yn cadw’r cofnod hwn hyd nes y bydd dau archwiliad arall o’r un cyfarpar neu ffliw wedi’u gwneud, ac am ddwy flynedd o leiaf.</translation>
    </message>
    <message>
        <source>Copies and keeping</source>
        <translation>Copïau a chadw</translation>
    </message>
    <message>
        <source>Next check advised by</source>
        <translation>Cynghorir archwiliad nesaf erbyn</translation>
    </message>
    <message>
        <source>(ix) Registration number</source>
        <translation>(ix) Rhif cofrestru</translation>
    </message>
    <message>
        <source>Findings: %1</source>
        <translation>Canfyddiadau: %1</translation>
    </message>
    <message>
        <source>Alarms</source>
        <translation>Larymau</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Ystafell</translation>
    </message>
    <message>
        <source>Replace by</source>
        <translation>Newid erbyn</translation>
    </message>
    <message>
        <source>Unsafe situations, by the engineer’s decision</source>
        <translation>Sefyllfaoedd anniogel, yn ôl penderfyniad y peiriannydd</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Dosbarth</translation>
    </message>
    <message>
        <source>Meter and pipework</source>
        <translation>Mesurydd a phibellau</translation>
    </message>
    <message>
        <source>Controls</source>
        <translation>Rheolyddion</translation>
    </message>
    <message>
        <source>Water of the system</source>
        <translation>Dŵr y system</translation>
    </message>
    <message>
        <source>Gas supply and rate</source>
        <translation>Cyflenwad a chyfradd nwy</translation>
    </message>
    <message>
        <source>Heating and hot water</source>
        <translation>Gwresogi a dŵr poeth</translation>
    </message>
    <message>
        <source>Flue and air</source>
        <translation>Ffliw ac aer</translation>
    </message>
    <message>
        <source>Air inlet and condensate</source>
        <translation>Mewnfa aer a chyddwysiad</translation>
    </message>
    <message>
        <source>Safety devices and flame</source>
        <translation>Dyfeisiau diogelwch a fflam</translation>
    </message>
    <message>
        <source>Work done by the maker’s schedule</source>
        <translation>Gwaith a wnaed yn ôl rhestr y gwneuthurwr</translation>
    </message>
    <message>
        <source>Gas and rate</source>
        <translation>Nwy a chyfradd</translation>
    </message>
    <message>
        <source>Looked at</source>
        <translation>Edrychwyd ar</translation>
    </message>
    <message>
        <source>Completion</source>
        <translation>Cwblhau</translation>
    </message>
    <message>
        <source>Hand-over</source>
        <translation>Trosglwyddo</translation>
    </message>
    <message>
        <source>Advice</source>
        <translation>Cyngor</translation>
    </message>
    <message>
        <source>serial number %1</source>
        <translation>rhif cyfresol %1</translation>
    </message>
    <message>
        <source>What was wrong</source>
        <translation>Beth oedd o’i le</translation>
    </message>
    <message>
        <source>Whether gas is escaping: not entered.</source>
        <translation>A yw nwy’n gollwng: heb ei nodi.</translation>
    </message>
    <message>
        <source>Gas was escaping.</source>
        <translation>Roedd nwy’n gollwng.</translation>
    </message>
    <message>
        <source>Gas is escaping.</source>
        <translation>Mae nwy’n gollwng.</translation>
    </message>
    <message>
        <source>No gas was escaping.</source>
        <translation>Nid oedd nwy’n gollwng.</translation>
    </message>
    <message>
        <source>No gas is escaping.</source>
        <translation>Nid oes nwy’n gollwng.</translation>
    </message>
    <message>
        <source>Whether gas was escaping: not entered.</source>
        <translation>A oedd nwy’n gollwng: heb ei nodi.</translation>
    </message>
    <message>
        <source>an engineer who is not named</source>
        <translation>peiriannydd heb ei enwi</translation>
    </message>
    <message>
        <source>%1 (card %2)</source>
        <translation>%1 (cerdyn %2)</translation>
    </message>
    <message>
        <source>Put right</source>
        <translation>Unionwyd</translation>
    </message>
    <message>
        <source>On %1, by %2</source>
        <translation>Ar %1, gan %2</translation>
    </message>
    <message>
        <source>Made safe</source>
        <translation>Gwnaed yn ddiogel</translation>
    </message>
    <message>
        <source>NOT made safe</source>
        <translation>NI wnaed yn ddiogel</translation>
    </message>
    <message>
        <source>REFUSED</source>
        <translation>GWRTHODWYD</translation>
    </message>
    <message>
        <source>Refused by: %1</source>
        <translation>Gwrthodwyd gan: %1</translation>
    </message>
    <message>
        <source>In their words: %1</source>
        <translation>Yn ei eiriau ei hun: %1</translation>
    </message>
    <message>
        <source>The supply was left: %1</source>
        <translation>Gadawyd y cyflenwad: %1</translation>
    </message>
    <message>
        <source>fixed, no. %1</source>
        <translation>wedi’i osod, rhif %1</translation>
    </message>
    <message>
        <source>fixed</source>
        <translation>wedi’i osod</translation>
    </message>
    <message>
        <source>none fixed</source>
        <translation>dim un wedi’i osod</translation>
    </message>
    <message>
        <source>Warning label</source>
        <translation>Label rhybudd</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>am %1</translation>
    </message>
    <message>
        <source>reference %1</source>
        <translation>cyfeirnod %1</translation>
    </message>
    <message>
        <source>Also told</source>
        <translation>Hysbyswyd hefyd</translation>
    </message>
    <message>
        <source>This notice</source>
        <translation>Yr hysbysiad hwn</translation>
    </message>
    <message>
        <source>nobody signed for it, a copy was left</source>
        <translation>ni lofnododd neb amdano, gadawyd copi</translation>
    </message>
    <message>
        <source>Received by: %1</source>
        <translation>Derbyniwyd gan: %1</translation>
    </message>
    <message>
        <source>Copy left: %1</source>
        <translation>Gadawyd copi: %1</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Yr hyn a ganfuwyd</translation>
    </message>
    <message>
        <source>What was found: %1</source>
        <translation>Yr hyn a ganfuwyd: %1</translation>
    </message>
    <message>
        <source>Work needed</source>
        <translation>Gwaith sydd ei angen</translation>
    </message>
    <message>
        <source>PUT RIGHT</source>
        <translation>UNIONWYD</translation>
    </message>
    <message>
        <source>It was: %1</source>
        <translation>Roedd yn: %1</translation>
    </message>
    <message>
        <source>It was found dangerous, and put right at once, on %1, by %2. Below stands what was done. Keep this notice.</source>
        <translation>Canfuwyd ei fod yn beryglus, ac fe’i hunionwyd ar unwaith, ar %1, gan %2. Isod mae’r hyn a wnaed. Cadwch yr hysbysiad hwn.</translation>
    </message>
    <message>
        <source>If it is used or left connected, it is an immediate danger to life or property.</source>
        <translation>Os caiff ei ddefnyddio neu ei adael wedi’i gysylltu, mae’n berygl uniongyrchol i fywyd neu eiddo.</translation>
    </message>
    <message>
        <source>It has a fault that could endanger life or property, even if nothing else fails.</source>
        <translation>Mae nam arno a allai beryglu bywyd neu eiddo, hyd yn oed os nad oes dim arall yn methu.</translation>
    </message>
    <message>
        <source>DANGER – DO NOT USE</source>
        <translation>PERYGL – PEIDIWCH Â’I DDEFNYDDIO</translation>
    </message>
    <message>
        <source>What not to do</source>
        <translation>Beth i beidio â’i wneud</translation>
    </message>
    <message>
        <source>Do not use it, turn it on or remove the label until a registered engineer has put it right.</source>
        <translation>Peidiwch â’i ddefnyddio, ei droi ymlaen na thynnu’r label nes bod peiriannydd cofrestredig wedi’i unioni.</translation>
    </message>
    <message>
        <source>Whoever uses it, or lets it be used, may commit an offence: Gas Safety (Installation and Use) Regulations 1998, regulation 34.</source>
        <translation>Gall pwy bynnag sy’n ei ddefnyddio, neu’n gadael iddo gael ei ddefnyddio, fod yn cyflawni trosedd: Gas Safety (Installation and Use) Regulations 1998, regulation 34 (rheoliad 34).</translation>
    </message>
    <message>
        <source>An unsafe situation was found.</source>
        <translation>Canfuwyd sefyllfa anniogel.</translation>
    </message>
    <message>
        <source>No unsafe situation was found.</source>
        <translation>Ni chanfuwyd sefyllfa anniogel.</translation>
    </message>
    <message>
        <source>The gas was left</source>
        <translation>Gadawyd y nwy</translation>
    </message>
    <message>
        <source>Carbon monoxide in the air</source>
        <translation>Carbon monocsid yn yr aer</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lle</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Ar ôl</translation>
    </message>
    <message>
        <source>— no reading entered</source>
        <translation>— dim darlleniad wedi’i nodi</translation>
    </message>
    <message>
        <source>Seen in the rooms</source>
        <translation>Gwelwyd yn yr ystafelloedd</translation>
    </message>
    <message>
        <source>The call</source>
        <translation>Yr alwad</translation>
    </message>
    <message>
        <source>The pipework was found in order by every test that was made.</source>
        <translation>Cafwyd bod y pibellau mewn trefn ym mhob prawf a wnaed.</translation>
    </message>
    <message>
        <source>The pipework was not found in order: see the findings.</source>
        <translation>Ni chafwyd bod y pibellau mewn trefn: gweler y canfyddiadau.</translation>
    </message>
    <message>
        <source>Something is to be looked at again: see the findings.</source>
        <translation>Mae rhywbeth i edrych arno eto: gweler y canfyddiadau.</translation>
    </message>
    <message>
        <source>No verdict: see the findings for what is missing.</source>
        <translation>Dim dyfarniad: gweler y canfyddiadau am yr hyn sydd ar goll.</translation>
    </message>
    <message>
        <source>Strength test</source>
        <translation>Prawf cryfder</translation>
    </message>
    <message>
        <source>Tightness test</source>
        <translation>Prawf tyndra</translation>
    </message>
    <message>
        <source>Lasted</source>
        <translation>Parhaodd</translation>
    </message>
    <message>
        <source>At the start</source>
        <translation>Ar y dechrau</translation>
    </message>
    <message>
        <source>At the end</source>
        <translation>Ar y diwedd</translation>
    </message>
    <message>
        <source>— not made</source>
        <translation>— heb ei wneud</translation>
    </message>
    <message>
        <source>The pipework</source>
        <translation>Y pibellau</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Cryfder</translation>
    </message>
    <message>
        <source>A dangerous gas fitting, reported to HSE.</source>
        <translation>Ffitiad nwy peryglus, wedi’i adrodd i HSE.</translation>
    </message>
    <message>
        <source>A dangerous gas fitting: to be reported to HSE within 14 days.</source>
        <translation>Ffitiad nwy peryglus: i’w adrodd i HSE o fewn 14 diwrnod.</translation>
    </message>
    <message>
        <source>The fitting</source>
        <translation>Y ffitiad</translation>
    </message>
    <message>
        <source>The fitting: %1</source>
        <translation>Y ffitiad: %1</translation>
    </message>
    <message>
        <source>Reported on</source>
        <translation>Adroddwyd ar</translation>
    </message>
    <message>
        <source>not yet reported when this was issued</source>
        <translation>heb ei adrodd eto pan gyhoeddwyd hwn</translation>
    </message>
    <message>
        <source>Reference of the report: %1</source>
        <translation>Cyfeirnod yr adroddiad: %1</translation>
    </message>
    <message>
        <source>Installed or serviced by</source>
        <translation>Gosodwyd neu gwasanaethwyd gan</translation>
    </message>
    <message>
        <source>What was installed</source>
        <translation>Yr hyn a osodwyd</translation>
    </message>
    <message>
        <source>The work</source>
        <translation>Y gwaith</translation>
    </message>
    <message>
        <source>in date</source>
        <translation>mewn dyddiad</translation>
    </message>
    <message>
        <source>due within 30 days</source>
        <translation>yn ddyledus o fewn 30 diwrnod</translation>
    </message>
    <message>
        <source>PAST ITS DATE</source>
        <translation>WEDI MYND HEIBIO’I DDYDDIAD</translation>
    </message>
    <message>
        <source>no date known</source>
        <translation>dim dyddiad hysbys</translation>
    </message>
    <message>
        <source>fluid gauge, none kept</source>
        <translation>medrydd hylif, dim un yn cael ei gadw</translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation>Tystysgrif</translation>
    </message>
    <message>
        <source>Calibrated</source>
        <translation>Graddnodwyd</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Yn ddyledus</translation>
    </message>
    <message>
        <source>On the day</source>
        <translation>Ar y diwrnod</translation>
    </message>
    <message>
        <source>Kept by</source>
        <translation>Cedwir gan</translation>
    </message>
    <message>
        <source>Registration number</source>
        <translation>Rhif cofrestru</translation>
    </message>
    <message>
        <source>State of</source>
        <translation>Cyflwr ar</translation>
    </message>
    <message>
        <source>Who reports</source>
        <translation>Pwy sy’n adrodd</translation>
    </message>
    <message>
        <source>The business reports, as soon as it knows enough to decide that the fitting is or could have been dangerous by its design, construction, manner of installation, modification or servicing. A copy of the report is kept with this entry.</source>
        <translation>Y busnes sy’n adrodd, cyn gynted ag y mae’n gwybod digon i benderfynu bod y ffitiad yn beryglus, neu y gallai fod wedi bod yn beryglus, oherwydd ei ddyluniad, ei adeiladwaith, y dull o’i osod, ei addasu neu ei wasanaethu. Cedwir copi o’r adroddiad gyda’r cofnodiad hwn.</translation>
    </message>
    <message>
        <source>Notified</source>
        <translation>Hysbyswyd</translation>
    </message>
    <message>
        <source>not yet entered</source>
        <translation>heb ei nodi eto</translation>
    </message>
    <message>
        <source>Past their date</source>
        <translation>Wedi mynd heibio’u dyddiad</translation>
    </message>
    <message>
        <source>Due within 30 days</source>
        <translation>Yn ddyledus o fewn 30 diwrnod</translation>
    </message>
    <message>
        <source>Without a date</source>
        <translation>Heb ddyddiad</translation>
    </message>
    <message>
        <source>no such day in this country’s law</source>
        <translation>dim diwrnod o’r fath yng nghyfraith y wlad hon</translation>
    </message>
    <message>
        <source>the day it runs from is not entered</source>
        <translation>y diwrnod y mae’n rhedeg ohono heb ei nodi</translation>
    </message>
    <message>
        <source>Certificate to the occupier, notice to the council</source>
        <translation>Tystysgrif i’r deiliad, hysbysiad i’r cyngor</translation>
    </message>
    <message>
        <source>Operating and maintaining information to the owner</source>
        <translation>Gwybodaeth weithredu a chynnal a chadw i’r perchennog</translation>
    </message>
    <message>
        <source>By when</source>
        <translation>Erbyn pryd</translation>
    </message>
    <message>
        <source>30 days after completion on %1 (regulation 20).</source>
        <translation>30 diwrnod ar ôl cwblhau ar %1 (regulation 20, rheoliad 20).</translation>
    </message>
    <message>
        <source>5 days after completion on %1 (regulation 40).</source>
        <translation>5 diwrnod ar ôl cwblhau ar %1 (regulation 40, rheoliad 40).</translation>
    </message>
    <message>
        <source>Report to HSE by</source>
        <translation>Adrodd i HSE erbyn</translation>
    </message>
    <message>
        <source>14 days after it was known, %1.</source>
        <translation>14 diwrnod ar ôl dod i wybod amdano, %1.</translation>
    </message>
    <message>
        <source>— nobody with an address</source>
        <translation>— neb â chyfeiriad</translation>
    </message>
    <message>
        <source>Our work at %1</source>
        <translation>Ein gwaith yn %1</translation>
    </message>
    <message>
        <source>Gas safety check at %1</source>
        <translation>Archwiliad diogelwch nwy yn %1</translation>
    </message>
    <message>
        <source>Signed for %1</source>
        <translation>Llofnodwyd dros %1</translation>
    </message>
    <message>
        <source>Dear %1,</source>
        <translation>Annwyl %1,</translation>
    </message>
    <message>
        <source>Our records show that the yearly check of the gas appliances at %2 is due by %6.</source>
        <translation>Mae ein cofnodion yn dangos bod angen gwneud archwiliad blynyddol y cyfarpar nwy yn %2 erbyn %6.</translation>
    </message>
    <message>
        <source>Our records show that the yearly check of the gas appliances at %2 was due by %6. We know of none since.</source>
        <translation>Mae ein cofnodion yn dangos y dylid bod wedi gwneud archwiliad blynyddol y cyfarpar nwy yn %2 erbyn %6. Ni wyddom am yr un ers hynny.</translation>
    </message>
    <message>
        <source>Our records show that the yearly check of the gas appliances at %2 falls due.</source>
        <translation>Mae ein cofnodion yn dangos bod archwiliad blynyddol y cyfarpar nwy yn %2 yn dod yn ddyledus.</translation>
    </message>
    <message>
        <source>Please ring us on %3 to agree a day. If somebody else has made the check, or the address is no longer yours, tell us, and we will remind you no more.</source>
        <translation>Ffoniwch ni ar %3 i gytuno ar ddiwrnod. Os yw rhywun arall wedi gwneud yr archwiliad, neu os nad chi biau’r cyfeiriad mwyach, rhowch wybod i ni, ac ni fyddwn yn eich atgoffa eto.</translation>
    </message>
    <message>
        <source>Yours faithfully,</source>
        <translation>Yr eiddoch yn gywir,</translation>
    </message>
    <message>
        <source>On %4 we came to %2 to check the gas appliances and could not get in.</source>
        <translation>Ar %4 daethom i %2 i archwilio’r cyfarpar nwy ac ni allem fynd i mewn.</translation>
    </message>
    <message>
        <source>The check is there for the safety of everybody who lives in the house. Please ring us on %3 to agree another day.</source>
        <translation>Mae’r archwiliad yno er diogelwch pawb sy’n byw yn y tŷ. Ffoniwch ni ar %3 i gytuno ar ddiwrnod arall.</translation>
    </message>
    <message>
        <source>With this letter comes the record of our work at %2 on %5.</source>
        <translation>Gyda’r llythyr hwn daw’r cofnod o’n gwaith yn %2 ar %5.</translation>
    </message>
    <message>
        <source>Please read first what it says of the outcome and of anything that is to be done, keep it with the papers of the premises, and ring us on %3 about anything that is not clear.</source>
        <translation>Darllenwch yn gyntaf yr hyn a ddywed am y canlyniad ac am unrhyw beth sydd i’w wneud, cadwch ef gyda phapurau’r eiddo, a ffoniwch ni ar %3 am unrhyw beth nad yw’n glir.</translation>
    </message>
    <message>
        <source>Test</source>
        <translation>Prawf</translation>
    </message>
    <message>
        <source>The visit</source>
        <translation>Yr ymweliad</translation>
    </message>
    <message>
        <source>After (min)</source>
        <translation>Ar ôl (mun)</translation>
    </message>
    <message>
        <source>CO (ppm)</source>
        <translation>CO (ppm)</translation>
    </message>
    <message>
        <source>Length (m)</source>
        <translation>Hyd (m)</translation>
    </message>
    <message>
        <source>%1 %2 of %3</source>
        <translation>%1 %2 o %3</translation>
    </message>
    <message>
        <source>Outcome as the engineer sees it</source>
        <translation>Canlyniad fel y’i gwêl y peiriannydd</translation>
    </message>
    <message>
        <source>Name, card number and date</source>
        <translation>Enw, rhif cerdyn a dyddiad</translation>
    </message>
    <message>
        <source>Name and date</source>
        <translation>Enw a dyddiad</translation>
    </message>
    <message>
        <source>Received and understood by, or copy left at</source>
        <translation>Derbyniwyd a deallwyd gan, neu gadawyd copi yn</translation>
    </message>
    <message>
        <source>Received by (not required)</source>
        <translation>Derbyniwyd gan (nid yw’n ofynnol)</translation>
    </message>
    <message>
        <source>Blank, to be filled in by pen. Typed in later, the record gets a number of its own; this blank’s number is its reference.</source>
        <translation>Ffurflen wag, i’w llenwi â phen. O’i theipio’n ddiweddarach, caiff y cofnod ei rif ei hun; rhif y ffurflen hon yw ei gyfeirnod.</translation>
    </message>
    <message>
        <source>the LPG supplier&apos;s emergency number, on the cylinder or tank</source>
        <translation>rhif argyfwng y cyflenwr LPG, ar y silindr neu’r tanc</translation>
    </message>
    <message>
        <source>the gas emergency number on the meter or your supplier&apos;s bill</source>
        <translation>y rhif argyfwng nwy ar y mesurydd neu ar fil eich cyflenwr</translation>
    </message>
    <message>
        <source>%1 (gas emergency service)</source>
        <translation>%1 (gwasanaeth argyfwng nwy)</translation>
    </message>
    <message>
        <source>%1, or the number on the cylinder or tank where it is another</source>
        <translation>%1, neu’r rhif ar y silindr neu’r tanc lle mae’n wahanol</translation>
    </message>
    <message>
        <source>%1, or the gas emergency number on the meter where it is another</source>
        <translation>%1, neu’r rhif argyfwng nwy ar y mesurydd lle mae’n wahanol</translation>
    </message>
    <message>
        <source>%1 first, and after that %2</source>
        <translation>%1 yn gyntaf, ac wedi hynny %2</translation>
    </message>
    <message>
        <source>the LPG supplier&apos;s number</source>
        <translation>rhif y cyflenwr LPG</translation>
    </message>
    <message>
        <source>the number on the meter</source>
        <translation>y rhif ar y mesurydd</translation>
    </message>
    <message>
        <source>%1 or the number on the tank</source>
        <translation>%1 neu’r rhif ar y tanc</translation>
    </message>
    <message>
        <source>%1 or the number on the meter</source>
        <translation>%1 neu’r rhif ar y mesurydd</translation>
    </message>
    <message>
        <source>%1, then %2</source>
        <translation>%1, yna %2</translation>
    </message>
    <message>
        <source>Close the emergency control valve at the meter, if you can reach it safely.</source>
        <translation>Caewch y falf rheoli argyfwng wrth y mesurydd, os gallwch ei chyrraedd yn ddiogel.</translation>
    </message>
    <message>
        <source>Close the emergency control valve, if you can reach it safely.</source>
        <translation>Caewch y falf rheoli argyfwng, os gallwch ei chyrraedd yn ddiogel.</translation>
    </message>
    <message>
        <source>Close the valve on the cylinder or tank, if you can reach it safely.</source>
        <translation>Caewch y falf ar y silindr neu’r tanc, os gallwch ei chyrraedd yn ddiogel.</translation>
    </message>
    <message>
        <source>No flames, no smoking. Switch nothing on or off: no light, no bell, no telephone inside.</source>
        <translation>Dim fflamau, dim ysmygu. Peidiwch â throi dim ymlaen nac i ffwrdd: dim golau, dim cloch, dim ffôn y tu mewn.</translation>
    </message>
    <message>
        <source>Open doors and windows on the way out. Get everybody out.</source>
        <translation>Agorwch ddrysau a ffenestri ar y ffordd allan. Ewch â phawb allan.</translation>
    </message>
    <message>
        <source>LPG sinks: keep out of cellars, drains and low places.</source>
        <translation>Mae LPG yn suddo: cadwch allan o seleri, draeniau a lleoedd isel.</translation>
    </message>
    <message>
        <source>Never enter a cellar that smells of gas, not even to reach the valve.</source>
        <translation>Peidiwch byth â mynd i mewn i seler sy’n arogli o nwy, hyd yn oed i gyrraedd y falf.</translation>
    </message>
    <message>
        <source>From outside and away from the building, ring %1.</source>
        <translation>O’r tu allan ac ymhell o’r adeilad, ffoniwch %1.</translation>
    </message>
    <message>
        <source>Keep everybody out until it has been made safe. Fire or injury: ring 999.</source>
        <translation>Cadwch bawb allan nes ei fod wedi’i wneud yn ddiogel. Tân neu anaf: ffoniwch 999.</translation>
    </message>
    <message>
        <source>Keep the gas off.</source>
        <translation>Cadwch y nwy i ffwrdd.</translation>
    </message>
    <message>
        <source>Trace the leak and repair it, then test again from the start.</source>
        <translation>Dewch o hyd i’r gollyngiad a’i drwsio, yna profwch eto o’r dechrau.</translation>
    </message>
    <message>
        <source>If it can&apos;t be repaired now, make safe: isolate or disconnect what leaks and seal the ends with proper fittings.</source>
        <translation>Os na ellir ei drwsio nawr, gwnewch yn ddiogel: ynyswch neu ddatgysylltwch yr hyn sy’n gollwng a seliwch y pennau â ffitiadau priodol.</translation>
    </message>
    <message>
        <source>Tell the responsible person, in writing, that the gas stays off and why.</source>
        <translation>Dywedwch wrth y person cyfrifol, yn ysgrifenedig, fod y nwy’n aros i ffwrdd a pham.</translation>
    </message>
    <message>
        <source>Only for a fault of the network or supply itself, or where it can&apos;t be made safe, ring %1.</source>
        <translation>Dim ond am nam ar y rhwydwaith neu’r cyflenwad ei hun, neu lle na ellir ei wneud yn ddiogel, ffoniwch %1.</translation>
    </message>
    <message>
        <source>Any smell of gas: do as for an escape instead.</source>
        <translation>Unrhyw arogl nwy: gwnewch yr un fath ag ar gyfer gollyngiad yn lle hynny.</translation>
    </message>
    <message>
        <source>Get everybody out into fresh air.</source>
        <translation>Ewch â phawb allan i’r awyr iach.</translation>
    </message>
    <message>
        <source>Turn the appliances off, if you need not stay to do it.</source>
        <translation>Trowch y cyfarpar i ffwrdd, os nad oes rhaid i chi aros i wneud hynny.</translation>
    </message>
    <message>
        <source>Open doors and windows.</source>
        <translation>Agorwch ddrysau a ffenestri.</translation>
    </message>
    <message>
        <source>Anyone unwell needs medical help at once: ring 999 and say that carbon monoxide is suspected.</source>
        <translation>Mae angen cymorth meddygol ar unwaith ar unrhyw un sy’n sâl: ffoniwch 999 a dywedwch fod amheuaeth o garbon monocsid.</translation>
    </message>
    <message>
        <source>Then ring %1.</source>
        <translation>Yna ffoniwch %1.</translation>
    </message>
    <message>
        <source>Nobody goes back in, and nothing is used, until a competent engineer has found the cause.</source>
        <translation>Nid oes neb yn mynd yn ôl i mewn, ac ni ddefnyddir dim, nes bod peiriannydd cymwys wedi dod o hyd i’r achos.</translation>
    </message>
    <message>
        <source>Smell of gas, or an escape</source>
        <translation>Arogl nwy, neu ollyngiad</translation>
    </message>
    <message>
        <source>The test failed, and there is no smell</source>
        <translation>Methodd y prawf, ac nid oes arogl</translation>
    </message>
    <message>
        <source>Carbon monoxide or fumes in a room</source>
        <translation>Carbon monocsid neu fygdarth mewn ystafell</translation>
    </message>
    <message>
        <source>For competent, registered engineers; the standard and the maker&apos;s instructions come first. Smell of gas: no flames, no switches; close the cylinder or tank; open up; out; ring %1.</source>
        <translation>Ar gyfer peirianwyr cymwys, cofrestredig; y safon a chyfarwyddiadau’r gwneuthurwr sy’n dod gyntaf. Arogl nwy: dim fflamau, dim switshis; caewch y silindr neu’r tanc; agorwch ddrysau a ffenestri; allan; ffoniwch %1.</translation>
    </message>
    <message>
        <source>For competent, registered engineers; the standard and the maker&apos;s instructions come first. Smell of gas: no flames, no switches; close the control valve; open up; out; ring %1.</source>
        <translation>Ar gyfer peirianwyr cymwys, cofrestredig; y safon a chyfarwyddiadau’r gwneuthurwr sy’n dod gyntaf. Arogl nwy: dim fflamau, dim switshis; caewch y falf reoli; agorwch ddrysau a ffenestri; allan; ffoniwch %1.</translation>
    </message>
    <message>
        <source>as a file</source>
        <translation>fel ffeil</translation>
    </message>
    <message>
        <source>by mail</source>
        <translation>drwy’r e-bost</translation>
    </message>
    <message>
        <source>printed</source>
        <translation>wedi’i argraffu</translation>
    </message>
    <message>
        <source>printed, marked copy</source>
        <translation>wedi’i argraffu, wedi’i nodi’n gopi</translation>
    </message>
    <message>
        <source>shown</source>
        <translation>dangoswyd</translation>
    </message>
    <message>
        <source>text message copied</source>
        <translation>neges destun wedi’i chopïo</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>dim byd</translation>
    </message>
    <message>
        <source>%1, %2 (%3)</source>
        <translation>%1, %2 (%3)</translation>
    </message>
    <message>
        <source>Good day,

attached is our record %1 of %2:
%3, %4.

It says: %5

Please keep it.</source>
        <translation>Diwrnod da,

ynghlwm mae ein cofnod %1 dyddiedig %2:
%3, %4.

Mae’n dweud: %5

Cadwch ef, os gwelwch yn dda.</translation>
    </message>
    <message>
        <source>It takes the place of the one that you have (%1). Please don&apos;t go by that any more.</source>
        <translation>Mae’n cymryd lle’r un sydd gennych (%1). Peidiwch â dilyn hwnnw mwyach.</translation>
    </message>
    <message>
        <source>%1, %2: %3 Record %4 of %5. %6</source>
        <translation>%1, %2: %3 Cofnod %4, %5. %6</translation>
    </message>
    <message>
        <source>nobody named</source>
        <translation>neb wedi’i enwi</translation>
    </message>
    <message>
        <source>%1: %2 (%4)</source>
        <translation>%1: %2 (%4)</translation>
    </message>
    <message>
        <source>%1: %2, to %3 (%4)</source>
        <translation>%1: %2, i %3 (%4)</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>%2 → %3</source>
        <translation>%2 → %3</translation>
    </message>
    <message>
        <source>%1: %2 → %3</source>
        <translation>%1: %2 → %3</translation>
    </message>
    <message>
        <source>Safe to touch</source>
        <translation>Diogel i’w gyffwrdd</translation>
    </message>
    <message>
        <source>Smell on arrival</source>
        <translation>Arogl wrth gyrraedd</translation>
    </message>
    <message>
        <source>Scope of the standard</source>
        <translation>Cwmpas y safon</translation>
    </message>
    <message>
        <source>Edition</source>
        <translation>Argraffiad</translation>
    </message>
    <message>
        <source>Gauge zero</source>
        <translation>Sero’r medrydd</translation>
    </message>
    <message>
        <source>Gauge calibration</source>
        <translation>Graddnodi’r medrydd</translation>
    </message>
    <message>
        <source>Gauge accuracy</source>
        <translation>Cywirdeb y medrydd</translation>
    </message>
    <message>
        <source>Test pressure</source>
        <translation>Pwysedd y prawf</translation>
    </message>
    <message>
        <source>Test time</source>
        <translation>Amser y prawf</translation>
    </message>
    <message>
        <source>Drop by volume</source>
        <translation>Cwymp yn ôl cyfaint</translation>
    </message>
    <message>
        <source>Two displays</source>
        <translation>Dwy sgrin</translation>
    </message>
    <message>
        <source>Joints proved and wiped</source>
        <translation>Uniadau wedi’u profi a’u sychu</translation>
    </message>
    <message>
        <source>Standing pressure</source>
        <translation>Pwysedd sefydlog</translation>
    </message>
    <message>
        <source>Working pressure</source>
        <translation>Pwysedd gweithio</translation>
    </message>
    <message>
        <source>Wobbe index of the network gas</source>
        <translation>Indecs Wobbe nwy’r rhwydwaith</translation>
    </message>
    <message>
        <source>Relative density of the network gas</source>
        <translation>Dwysedd cymharol nwy’r rhwydwaith</translation>
    </message>
    <message>
        <source>Calorific value</source>
        <translation>Gwerth caloriffig</translation>
    </message>
    <message>
        <source>Pressure drop at the largest flow</source>
        <translation>Cwymp pwysedd ar y llif mwyaf</translation>
    </message>
    <message>
        <source>Pressure drop at the measured flow</source>
        <translation>Cwymp pwysedd ar y llif a fesurwyd</translation>
    </message>
    <message>
        <source>Purge volume, larger installation</source>
        <translation>Cyfaint carthu, gosodiad mwy</translation>
    </message>
    <message>
        <source>Purge flow</source>
        <translation>Llif carthu</translation>
    </message>
    <message>
        <source>End of the purge</source>
        <translation>Diwedd y carthu</translation>
    </message>
    <message>
        <source>Standard that applies</source>
        <translation>Y safon sy’n berthnasol</translation>
    </message>
    <message>
        <source>Readable movement of the gauge</source>
        <translation>Symudiad darllenadwy’r medrydd</translation>
    </message>
    <message>
        <source>Longest test on this gauge</source>
        <translation>Prawf hwyaf ar y medrydd hwn</translation>
    </message>
    <message>
        <source>Leak permitted</source>
        <translation>Gollyngiad a ganiateir</translation>
    </message>
    <message>
        <source>Strength test pressure</source>
        <translation>Pwysedd prawf cryfder</translation>
    </message>
    <message>
        <source>Strength test times</source>
        <translation>Amserau prawf cryfder</translation>
    </message>
    <message>
        <source>Drop from meter to appliance</source>
        <translation>Cwymp o’r mesurydd i’r cyfarpar</translation>
    </message>
    <message>
        <source>Working pressure at the appliance</source>
        <translation>Pwysedd gweithio wrth y cyfarpar</translation>
    </message>
    <message>
        <source>Burner pressure</source>
        <translation>Pwysedd y llosgydd</translation>
    </message>
    <message>
        <source>Average pressure at the meter</source>
        <translation>Pwysedd cyfartalog wrth y mesurydd</translation>
    </message>
    <message>
        <source>Hot water output</source>
        <translation>Allbwn dŵr poeth</translation>
    </message>
    <message>
        <source>Hot water against heat input</source>
        <translation>Dŵr poeth yn erbyn mewnbwn gwres</translation>
    </message>
    <message>
        <source>Examinations after work, regulation 26(9)</source>
        <translation>Archwiliadau ar ôl gwaith, regulation 26(9) (rheoliad 26(9))</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio at maximum rate</source>
        <translation>Cymhareb CO/CO₂ ar y gyfradd uchaf</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio at minimum rate</source>
        <translation>Cymhareb CO/CO₂ ar y gyfradd isaf</translation>
    </message>
    <message>
        <source>CO at maximum rate</source>
        <translation>CO ar y gyfradd uchaf</translation>
    </message>
    <message>
        <source>CO at minimum rate</source>
        <translation>CO ar y gyfradd isaf</translation>
    </message>
    <message>
        <source>CO₂ at maximum rate</source>
        <translation>CO₂ ar y gyfradd uchaf</translation>
    </message>
    <message>
        <source>CO₂ at minimum rate</source>
        <translation>CO₂ ar y gyfradd isaf</translation>
    </message>
    <message>
        <source>O₂ at the air inlet</source>
        <translation>O₂ wrth y fewnfa aer</translation>
    </message>
    <message>
        <source>CO₂ at the air inlet</source>
        <translation>CO₂ wrth y fewnfa aer</translation>
    </message>
    <message>
        <source>O₂ and CO₂ belong together</source>
        <translation>O₂ a CO₂ yn perthyn i’w gilydd</translation>
    </message>
    <message>
        <source>O₂ and CO₂ belong together, lowest rate</source>
        <translation>O₂ a CO₂ yn perthyn i’w gilydd, cyfradd isaf</translation>
    </message>
    <message>
        <source>Ratio as printed and as worked out</source>
        <translation>Cymhareb fel y’i hargraffwyd ac fel y’i cyfrifwyd</translation>
    </message>
    <message>
        <source>Scope of the ventilation standard</source>
        <translation>Cwmpas y safon awyru</translation>
    </message>
    <message>
        <source>Free area of the vents</source>
        <translation>Arwynebedd rhydd yr awyrellau</translation>
    </message>
    <message>
        <source>Vents at high level</source>
        <translation>Awyrellau ar lefel uchel</translation>
    </message>
    <message>
        <source>Vents at low level</source>
        <translation>Awyrellau ar lefel isel</translation>
    </message>
    <message>
        <source>Openable window or door</source>
        <translation>Ffenestr neu ddrws y gellir ei agor</translation>
    </message>
    <message>
        <source>Appliance allowed in this room</source>
        <translation>Cyfarpar a ganiateir yn yr ystafell hon</translation>
    </message>
    <message>
        <source>State of the vents</source>
        <translation>Cyflwr yr awyrellau</translation>
    </message>
    <message>
        <source>Cooker in a basement</source>
        <translation>Popty mewn islawr</translation>
    </message>
    <message>
        <source>Boiler room temperature</source>
        <translation>Tymheredd yr ystafell foeleri</translation>
    </message>
    <message>
        <source>Carbon monoxide outdoors</source>
        <translation>Carbon monocsid y tu allan</translation>
    </message>
    <message>
        <source>Carbon monoxide in the room</source>
        <translation>Carbon monocsid yn yr ystafell</translation>
    </message>
    <message>
        <source>Carbon monoxide, 15 minutes</source>
        <translation>Carbon monocsid, 15 munud</translation>
    </message>
    <message>
        <source>Carbon monoxide, 8 hours</source>
        <translation>Carbon monocsid, 8 awr</translation>
    </message>
    <message>
        <source>How the room was sampled</source>
        <translation>Sut y samplwyd yr ystafell</translation>
    </message>
    <message>
        <source>What the carbon monoxide could do to the blood</source>
        <translation>Yr hyn y gallai’r carbon monocsid ei wneud i’r gwaed</translation>
    </message>
    <message>
        <source>Next safety check</source>
        <translation>Archwiliad diogelwch nesaf</translation>
    </message>
    <message>
        <source>Whether the check was in time</source>
        <translation>A oedd yr archwiliad mewn pryd</translation>
    </message>
    <message>
        <source>Engineer&apos;s card</source>
        <translation>Cerdyn y peiriannydd</translation>
    </message>
    <message>
        <source>Engineer&apos;s categories</source>
        <translation>Categorïau’r peiriannydd</translation>
    </message>
    <message>
        <source>Analyser&apos;s calibration</source>
        <translation>Graddnodi’r dadansoddydd</translation>
    </message>
    <message>
        <source>Calibration runs out today, %1. It still counts for this test.</source>
        <translation>Daw’r graddnodi i ben heddiw, %1. Mae’n cyfrif o hyd ar gyfer y prawf hwn.</translation>
    </message>
    <message numerus="yes">
        <source>Calibration runs out in %n day(s), on %1. It counts for this test.</source>
        <translation>
            <numerusform>Daw’r graddnodi i ben ymhen %n o ddiwrnodau, ar %1. Mae’n cyfrif ar gyfer y prawf hwn.</numerusform>
            <numerusform>Daw’r graddnodi i ben ymhen %n diwrnod, ar %1. Mae’n cyfrif ar gyfer y prawf hwn.</numerusform>
            <numerusform>Daw’r graddnodi i ben ymhen %n o ddiwrnodau, ar %1. Mae’n cyfrif ar gyfer y prawf hwn.</numerusform>
            <numerusform>Daw’r graddnodi i ben ymhen %n o ddiwrnodau, ar %1. Mae’n cyfrif ar gyfer y prawf hwn.</numerusform>
            <numerusform>Daw’r graddnodi i ben ymhen %n o ddiwrnodau, ar %1. Mae’n cyfrif ar gyfer y prawf hwn.</numerusform>
        </translation>
    </message>
    <message>
        <source>Maker&apos;s instructions</source>
        <translation>Cyfarwyddiadau’r gwneuthurwr</translation>
    </message>
    <message>
        <source>published</source>
        <translation>cyhoeddwyd</translation>
    </message>
    <message>
        <source>read second-hand</source>
        <translation>wedi’i ddarllen yn ail-law</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>o’r cof</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>arfer cyffredin</translation>
    </message>
    <message>
        <source>confirmed by the firm</source>
        <translation>cadarnhawyd gan y cwmni</translation>
    </message>
    <message>
        <source>the maker&apos;s figure</source>
        <translation>ffigur y gwneuthurwr</translation>
    </message>
    <message>
        <source>at most</source>
        <translation>ar y mwyaf</translation>
    </message>
    <message>
        <source>below</source>
        <translation>islaw</translation>
    </message>
    <message>
        <source>at least</source>
        <translation>o leiaf</translation>
    </message>
    <message>
        <source>within</source>
        <translation>o fewn</translation>
    </message>
    <message>
        <source>exactly</source>
        <translation>yn union</translation>
    </message>
    <message>
        <source>as given</source>
        <translation>fel y’i rhoddwyd</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>%1 ar y mwyaf</translation>
    </message>
    <message>
        <source>below %1</source>
        <translation>islaw %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>o leiaf %1</translation>
    </message>
    <message>
        <source>within %1</source>
        <translation>o fewn %1</translation>
    </message>
    <message>
        <source>exactly %1</source>
        <translation>%1 yn union</translation>
    </message>
    <message>
        <source>%1</source>
        <translation>%1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 i %2</translation>
    </message>
    <message>
        <source>up to %1: %2</source>
        <translation>hyd at %1: %2</translation>
    </message>
    <message>
        <source>confirmed by %1</source>
        <translation>cadarnhawyd gan %1</translation>
    </message>
    <message>
        <source>confirmed by %1, %2</source>
        <translation>cadarnhawyd gan %1, %2</translation>
    </message>
    <message>
        <source>any edition</source>
        <translation>unrhyw argraffiad</translation>
    </message>
    <message>
        <source>%1 (band: %2)</source>
        <translation>%1 (band: %2)</translation>
    </message>
    <message>
        <source>%1 (limit: %2)</source>
        <translation>%1 (terfyn: %2)</translation>
    </message>
    <message>
        <source>COPY</source>
        <translation>COPI</translation>
    </message>
    <message>
        <source>SUPERSEDED</source>
        <translation>WEDI’I DDISODLI</translation>
    </message>
    <message>
        <source>VOID</source>
        <translation>DI-RYM</translation>
    </message>
    <message>
        <source>Replaces revision %1 of %2: %3</source>
        <translation>Yn disodli diwygiad %1 o %2: %3</translation>
    </message>
    <message>
        <source>A reading that this needs has not been entered.</source>
        <translation>Nid yw darlleniad sydd ei angen ar gyfer hyn wedi’i nodi.</translation>
    </message>
    <message>
        <source>What was typed can&apos;t be read as a number. It is kept: put it right to have it judged.</source>
        <translation>Ni ellir darllen yr hyn a deipiwyd fel rhif. Fe’i cedwir: unionwch ef er mwyn ei farnu.</translation>
    </message>
    <message>
        <source>The rule book has no limit for this. Enter it there from your own copy of the standard.</source>
        <translation>Nid oes gan y llyfr rheolau derfyn ar gyfer hyn. Nodwch ef yno o’ch copi eich hun o’r safon.</translation>
    </message>
    <message>
        <source>This limit was written down from memory of the standard: check it against your copy, then confirm it in the rule book.</source>
        <translation>Ysgrifennwyd y terfyn hwn o gof o’r safon: gwiriwch ef yn erbyn eich copi, yna cadarnhewch ef yn y llyfr rheolau.</translation>
    </message>
    <message>
        <source>This limit was read in training notes or the trade press, not in the standard: check it against your copy, then confirm it in the rule book.</source>
        <translation>Darllenwyd y terfyn hwn mewn nodiadau hyfforddi neu yng ngwasg y grefft, nid yn y safon: gwiriwch ef yn erbyn eich copi, yna cadarnhewch ef yn y llyfr rheolau.</translation>
    </message>
    <message>
        <source>This figure is a habit of the trade and stands in no standard that was read: it advises and decides nothing. Confirm it in the rule book if your firm goes by it.</source>
        <translation>Arfer y grefft yw’r ffigur hwn ac nid yw mewn unrhyw safon a ddarllenwyd: mae’n cynghori ac nid yw’n penderfynu dim. Cadarnhewch ef yn y llyfr rheolau os yw eich cwmni’n ei ddilyn.</translation>
    </message>
    <message>
        <source>%1 lies outside %2 to %3.</source>
        <translation>Mae %1 y tu allan i %2 i %3.</translation>
    </message>
    <message>
        <source>%1 may not judge a test made on %2. Choose the edition that is in force on that day.</source>
        <translation>Ni chaiff %1 farnu prawf a wnaed ar %2. Dewiswch yr argraffiad sydd mewn grym ar y diwrnod hwnnw.</translation>
    </message>
    <message>
        <source>Edition 3 and Edition 4 may both judge on this day: say which one you tested to.</source>
        <translation>Gall Argraffiad 3 ac Argraffiad 4 ill dau farnu ar y diwrnod hwn: dywedwch i ba un y profasoch.</translation>
    </message>
    <message>
        <source>Judged by %1, in force on the day of the test.</source>
        <translation>Barnwyd yn ôl %1, a oedd mewn grym ar ddiwrnod y prawf.</translation>
    </message>
    <message>
        <source>The exposed metal pipe was swept with a voltage detector: safe to touch.</source>
        <translation>Ysgubwyd y bibell fetel agored â chanfodydd foltedd: diogel i’w chyffwrdd.</translation>
    </message>
    <message>
        <source>Voltage was found on the pipe. Keep off it and warn the people there; have it made safe by a competent electrician before going on.</source>
        <translation>Canfuwyd foltedd ar y bibell. Cadwch oddi arni a rhybuddiwch y bobl yno; sicrhewch fod trydanwr cymwys yn ei gwneud yn ddiogel cyn mynd ymlaen.</translation>
    </message>
    <message>
        <source>The pipe was not checked for voltage. Sweep the exposed metal pipe with a no-contact detector before touching it.</source>
        <translation>Ni wiriwyd y bibell am foltedd. Ysgubwch y bibell fetel agored â chanfodydd digyffwrdd cyn ei chyffwrdd.</translation>
    </message>
    <message>
        <source>No open ends were seen.</source>
        <translation>Ni welwyd unrhyw bennau agored.</translation>
    </message>
    <message>
        <source>An open end was found. Seal it with the proper fitting before any pressure goes on.</source>
        <translation>Canfuwyd pen agored. Seliwch ef â’r ffitiad priodol cyn rhoi unrhyw bwysedd arno.</translation>
    </message>
    <message>
        <source>An open end was found and sealed before the test.</source>
        <translation>Canfuwyd pen agored a’i selio cyn y prawf.</translation>
    </message>
    <message>
        <source>Open ends were not looked for. Walk the installation before any pressure goes on.</source>
        <translation>Ni chwiliwyd am bennau agored. Cerddwch y gosodiad cyn rhoi unrhyw bwysedd arno.</translation>
    </message>
    <message>
        <source>No smell of gas on arrival.</source>
        <translation>Dim arogl nwy wrth gyrraedd.</translation>
    </message>
    <message>
        <source>There was a smell of gas on arrival. Deal with the escape first: press F12 for what to do.</source>
        <translation>Roedd arogl nwy wrth gyrraedd. Deliwch â’r gollyngiad yn gyntaf: gwasgwch F12 am yr hyn i’w wneud.</translation>
    </message>
    <message>
        <source>Say whether there was a smell of gas on arrival.</source>
        <translation>Dywedwch a oedd arogl nwy wrth gyrraedd.</translation>
    </message>
    <message>
        <source>What can be seen of the pipework is sound.</source>
        <translation>Mae’r hyn y gellir ei weld o’r pibellau yn gadarn.</translation>
    </message>
    <message>
        <source>Defects were seen: weigh each one, and say in the notes what was done about it.</source>
        <translation>Gwelwyd diffygion: pwyswch a mesurwch bob un, a dywedwch yn y nodiadau beth a wnaed yn ei gylch.</translation>
    </message>
    <message>
        <source>The pipework has not been looked at.</source>
        <translation>Nid edrychwyd ar y pibellau.</translation>
    </message>
    <message>
        <source>The gauge stood at zero before it was connected.</source>
        <translation>Roedd y medrydd ar sero cyn ei gysylltu.</translation>
    </message>
    <message>
        <source>The gauge was not zeroed before it was connected: its readings can&apos;t be relied on.</source>
        <translation>Ni serowyd y medrydd cyn ei gysylltu: ni ellir dibynnu ar ei ddarlleniadau.</translation>
    </message>
    <message>
        <source>Say whether the gauge was zeroed before it was connected.</source>
        <translation>Dywedwch a serowyd y medrydd cyn ei gysylltu.</translation>
    </message>
    <message>
        <source>In calibration until %1.</source>
        <translation>Graddnodiad yn ddilys hyd %1.</translation>
    </message>
    <message>
        <source>Calibration ran out on %1, before this test. Repeat the test with a gauge in calibration.</source>
        <translation>Daeth y graddnodi i ben ar %1, cyn y prawf hwn. Ailadroddwch y prawf â medrydd sydd o fewn ei raddnodi.</translation>
    </message>
    <message>
        <source>No calibration date is kept for this gauge. Enter it under Firm, instruments.</source>
        <translation>Nid oes dyddiad graddnodi ar gadw ar gyfer y medrydd hwn. Nodwch ef o dan Cwmni, offerynnau.</translation>
    </message>
    <message>
        <source>Say which gauge was used.</source>
        <translation>Dywedwch pa fedrydd a ddefnyddiwyd.</translation>
    </message>
    <message>
        <source>The instrument chosen is not a pressure gauge. Choose the gauge that was read.</source>
        <translation>Nid medrydd pwysedd yw’r offeryn a ddewiswyd. Dewiswch y medrydd a ddarllenwyd.</translation>
    </message>
    <message>
        <source>The gauge is accurate to %1; at most %2 is asked.</source>
        <translation>Mae’r medrydd yn gywir i %1; gofynnir am %2 ar y mwyaf.</translation>
    </message>
    <message>
        <source>The gauge is accurate to %1 only; at most %2 is asked. Use a better gauge.</source>
        <translation>Nid yw’r medrydd yn gywir ond i %1; gofynnir am %2 ar y mwyaf. Defnyddiwch fedrydd gwell.</translation>
    </message>
    <message>
        <source>The gauge&apos;s accuracy is not known. Enter it under Firm, instruments, from its certificate.</source>
        <translation>Nid yw cywirdeb y medrydd yn hysbys. Nodwch ef o dan Cwmni, offerynnau, o’i dystysgrif.</translation>
    </message>
    <message>
        <source>Installation volume %1: meter %2, pipes %3, fittings %4.</source>
        <translation>Cyfaint y gosodiad %1: mesurydd %2, pibellau %3, ffitiadau %4.</translation>
    </message>
    <message>
        <source>The installation volume can&apos;t be worked out yet: the meter, or a pipe&apos;s size or length, is missing.</source>
        <translation>Ni ellir cyfrifo cyfaint y gosodiad eto: mae’r mesurydd, neu faint neu hyd pibell, ar goll.</translation>
    </message>
    <message>
        <source>Pipe volumes are from the trade table.</source>
        <translation>Daw cyfeintiau’r pibellau o dabl y grefft.</translation>
    </message>
    <message>
        <source>The trade table lacks a size of pipe: its volume is worked out from the tube&apos;s dimensions.</source>
        <translation>Nid yw maint o bibell yn nhabl y grefft: cyfrifir ei chyfaint o ddimensiynau’r tiwb.</translation>
    </message>
    <message>
        <source>A volume was typed in and is used as it stands.</source>
        <translation>Deipiwyd cyfaint ac fe’i defnyddir fel y mae.</translation>
    </message>
    <message>
        <source>The installation lies within the scope of the small-installation standard.</source>
        <translation>Mae’r gosodiad o fewn cwmpas y safon gosodiadau bach.</translation>
    </message>
    <message>
        <source>The volume of %1 is beyond this standard&apos;s %2: another standard applies.</source>
        <translation>Mae’r cyfaint o %1 y tu hwnt i %2 y safon hon: mae safon arall yn berthnasol.</translation>
    </message>
    <message>
        <source>The pipe of %1 is beyond this standard&apos;s %2: another standard applies.</source>
        <translation>Mae’r bibell o %1 y tu hwnt i %2 y safon hon: mae safon arall yn berthnasol.</translation>
    </message>
    <message>
        <source>The meter of %1 is beyond this standard&apos;s %2: another standard applies.</source>
        <translation>Mae’r mesurydd o %1 y tu hwnt i %2 y safon hon: mae safon arall yn berthnasol.</translation>
    </message>
    <message>
        <source>The pressure of %1 is beyond this standard&apos;s %2: another standard applies.</source>
        <translation>Mae’r pwysedd o %1 y tu hwnt i %2 y safon hon: mae safon arall yn berthnasol.</translation>
    </message>
    <message>
        <source>Whether this standard applies can&apos;t be said before meter, pipes and pressures are entered.</source>
        <translation>Ni ellir dweud a yw’r safon hon yn berthnasol cyn nodi’r mesurydd, y pibellau a’r pwyseddau.</translation>
    </message>
    <message>
        <source>IGE/UP/1A applies instead (natural gas, up to 1 m³, 150 mm and 40 mbar).</source>
        <translation>Mae IGE/UP/1A yn berthnasol yn lle hynny (nwy naturiol, hyd at 1 m³, 150 mm a 40 mbar).</translation>
    </message>
    <message>
        <source>IGE/UP/1 applies instead.</source>
        <translation>Mae IGE/UP/1 yn berthnasol yn lle hynny.</translation>
    </message>
    <message>
        <source>IGE/UP/1A applies instead if the installation lies within it (natural gas, up to 1 m³, 150 mm and 40 mbar), otherwise IGE/UP/1.</source>
        <translation>Mae IGE/UP/1A yn berthnasol yn lle hynny os yw’r gosodiad o fewn ei chwmpas (nwy naturiol, hyd at 1 m³, 150 mm a 40 mbar), fel arall IGE/UP/1.</translation>
    </message>
    <message>
        <source>Edition 4&apos;s scope is not in the rule book: enter it from your own copy. Edition 3&apos;s is shown for information.</source>
        <translation>Nid yw cwmpas Argraffiad 4 yn y llyfr rheolau: nodwch ef o’ch copi eich hun. Dangosir cwmpas Argraffiad 3 er gwybodaeth.</translation>
    </message>
    <message>
        <source>Say whether the whole installation was tested or a part of it.</source>
        <translation>Dywedwch ai’r gosodiad cyfan neu ran ohono a brofwyd.</translation>
    </message>
    <message>
        <source>No perceptible rise from %2 (change %1).</source>
        <translation>Dim codiad canfyddadwy o %2 (newid %1).</translation>
    </message>
    <message>
        <source>The pressure rose by %1 (perceptible from %2): the valve may be letting by. Stop. Prove it with leak detection fluid; if it passes, make safe and report it. No tightness test until the valve is right.</source>
        <translation>Cododd y pwysedd %1 (canfyddadwy o %2): gall y falf fod yn gollwng heibio. Stopiwch. Profwch hi â hylif canfod gollyngiadau; os yw’n gadael nwy heibio, gwnewch yn ddiogel a’i hadrodd. Dim prawf tyndra nes bod y falf yn iawn.</translation>
    </message>
    <message>
        <source>The pressure fell by %1, which points to a leak. Go on only to find it.</source>
        <translation>Cwympodd y pwysedd %1, sy’n awgrymu gollyngiad. Ewch ymlaen dim ond i ddod o hyd iddo.</translation>
    </message>
    <message>
        <source>Started at %1, outside %2 to %3. Repeat the let-by test within that band.</source>
        <translation>Dechreuwyd ar %1, y tu allan i %2 i %3. Ailadroddwch y prawf gollwng heibio o fewn y band hwnnw.</translation>
    </message>
    <message>
        <source>Watched for %1 only; at least %2 is needed. Repeat it.</source>
        <translation>Gwyliwyd am %1 yn unig; mae angen o leiaf %2. Ailadroddwch ef.</translation>
    </message>
    <message>
        <source>Steady enough to start timing (change %1).</source>
        <translation>Digon sefydlog i ddechrau amseru (newid %1).</translation>
    </message>
    <message>
        <source>Still moving: %1, more than %2. Wait longer before timing; if it will not steady, find out why.</source>
        <translation>Yn dal i symud: %1, mwy na %2. Arhoswch yn hwy cyn amseru; os na fydd yn sefydlogi, darganfyddwch pam.</translation>
    </message>
    <message>
        <source>Settled for %1 only; at least %2 is needed. Repeat it.</source>
        <translation>Sefydlogwyd am %1 yn unig; mae angen o leiaf %2. Ailadroddwch ef.</translation>
    </message>
    <message>
        <source>Timed from %1.</source>
        <translation>Amserwyd o %1.</translation>
    </message>
    <message>
        <source>Timed from %1, below %2. Isolate and find the cause before testing.</source>
        <translation>Amserwyd o %1, islaw %2. Ynyswch a dewch o hyd i’r achos cyn profi.</translation>
    </message>
    <message>
        <source>Timed from %1: the test pressure could not be reached, and %2 or more is accepted then.</source>
        <translation>Amserwyd o %1: ni ellid cyrraedd pwysedd y prawf, a derbynnir %2 neu fwy bryd hynny.</translation>
    </message>
    <message>
        <source>Timed from %1, short of the test pressure. From %2 it is accepted only where the pressure can&apos;t be reached: say why, or raise it and repeat.</source>
        <translation>Amserwyd o %1, llai na phwysedd y prawf. O %2 fe’i derbynnir dim ond lle na ellir cyrraedd y pwysedd: dywedwch pam, neu codwch ef ac ailadroddwch.</translation>
    </message>
    <message>
        <source>Timed from %1, above %2: the regulator may have locked up and hide a leak. Lower it and repeat.</source>
        <translation>Amserwyd o %1, uwchlaw %2: gall y rheolydd fod wedi cloi ac yn cuddio gollyngiad. Gostyngwch ef ac ailadroddwch.</translation>
    </message>
    <message>
        <source>Timed for %1; %2 is needed.</source>
        <translation>Amserwyd am %1; mae angen %2.</translation>
    </message>
    <message>
        <source>Timed for %1; %2 is needed. Repeat the test.</source>
        <translation>Amserwyd am %1; mae angen %2. Ailadroddwch y prawf.</translation>
    </message>
    <message>
        <source>No perceptible movement: %1, below %2.</source>
        <translation>Dim symudiad canfyddadwy: %1, islaw %2.</translation>
    </message>
    <message>
        <source>A fall of %1, within the %2 allowed, and no smell of gas.</source>
        <translation>Cwymp o %1, o fewn y %2 a ganiateir, a dim arogl nwy.</translation>
    </message>
    <message>
        <source>A fall of %1 is more than the %2 allowed.</source>
        <translation>Mae cwymp o %1 yn fwy na’r %2 a ganiateir.</translation>
    </message>
    <message>
        <source>A fall of %1 on new pipework, where none is allowed (perceptible from %2).</source>
        <translation>Cwymp o %1 ar bibellau newydd, lle na chaniateir dim (canfyddadwy o %2).</translation>
    </message>
    <message>
        <source>A fall of %1 on pipework alone, where none is allowed (perceptible from %2).</source>
        <translation>Cwymp o %1 ar bibellau yn unig, lle na chaniateir dim (canfyddadwy o %2).</translation>
    </message>
    <message>
        <source>The pressure rose by %1 during the test: warming, or the valve letting by. Find the cause and repeat.</source>
        <translation>Cododd y pwysedd %1 yn ystod y prawf: cynhesu, neu’r falf yn gollwng heibio. Dewch o hyd i’r achos ac ailadroddwch.</translation>
    </message>
    <message>
        <source>A smell of gas fails the test, whatever the gauge shows.</source>
        <translation>Mae arogl nwy yn methu’r prawf, beth bynnag y mae’r medrydd yn ei ddangos.</translation>
    </message>
    <message>
        <source>Say whether there was a smell of gas during the test.</source>
        <translation>Dywedwch a oedd arogl nwy yn ystod y prawf.</translation>
    </message>
    <message>
        <source>Say whether appliances were connected, isolated or not there during the test.</source>
        <translation>Dywedwch a oedd cyfarpar wedi’u cysylltu, wedi’u hynysu neu heb fod yno yn ystod y prawf.</translation>
    </message>
    <message>
        <source>Say whether the pipework is new or was there before.</source>
        <translation>Dywedwch a yw’r pibellau’n newydd neu a oeddent yno cynt.</translation>
    </message>
    <message>
        <source>A fall of %1, below %2, with the pipework shown clear of movement: the volume need not be worked out.</source>
        <translation>Cwymp o %1, islaw %2, a dangoswyd nad oes symudiad yn y pibellau: nid oes rhaid cyfrifo’r cyfaint.</translation>
    </message>
    <message>
        <source>The gauge moved by %1 (perceptible from %2). Isolate the appliances at their valves and repeat, to show that it does not come from the pipework.</source>
        <translation>Symudodd y medrydd %1 (canfyddadwy o %2). Ynyswch y cyfarpar wrth eu falfiau ac ailadroddwch, i ddangos nad o’r pibellau y daw.</translation>
    </message>
    <message>
        <source>With appliances isolated the gauge did not move perceptibly (%1): the pipework is clear.</source>
        <translation>Gyda’r cyfarpar wedi’u hynysu ni symudodd y medrydd yn ganfyddadwy (%1): mae’r pibellau’n glir.</translation>
    </message>
    <message>
        <source>With appliances isolated it still fell by %1 (perceptible from %2): the pipework leaks.</source>
        <translation>Gyda’r cyfarpar wedi’u hynysu cwympodd o hyd %1 (canfyddadwy o %2): mae’r pibellau’n gollwng.</translation>
    </message>
    <message>
        <source>The new pipework is tight. Now open the appliance valves and repeat the test.</source>
        <translation>Mae’r pibellau newydd yn dynn. Nawr agorwch falfiau’r cyfarpar ac ailadroddwch y prawf.</translation>
    </message>
    <message>
        <source>What Edition 4 allows for %1 is not in the rule book. Enter its drops by volume there, once, from your own copy of the standard.</source>
        <translation>Nid yw’r hyn y mae Argraffiad 4 yn ei ganiatáu ar gyfer %1 yn y llyfr rheolau. Nodwch ei gwympiadau yn ôl cyfaint yno, unwaith, o’ch copi eich hun o’r safon.</translation>
    </message>
    <message>
        <source>A volume of %1 is in the band up to %2, which may fall by %3.</source>
        <translation>Mae cyfaint o %1 yn y band hyd at %2, a gaiff gwympo %3.</translation>
    </message>
    <message>
        <source>The volume of %1 is beyond the last band entered in the rule book.</source>
        <translation>Mae’r cyfaint o %1 y tu hwnt i’r band olaf a nodwyd yn y llyfr rheolau.</translation>
    </message>
    <message>
        <source>For information only: the withdrawn Edition 3 would have allowed %1. It decides nothing here.</source>
        <translation>Er gwybodaeth yn unig: byddai Argraffiad 3, a dynnwyd yn ôl, wedi caniatáu %1. Nid yw’n penderfynu dim yma.</translation>
    </message>
    <message>
        <source>%1 is too near the limit of %2 to tell: the gauge reads a change to ±%3. Repeat the test, or use a finer gauge.</source>
        <translation>Mae %1 yn rhy agos at y terfyn o %2 i ddweud: mae’r medrydd yn darllen newid i ±%3. Ailadroddwch y prawf, neu defnyddiwch fedrydd manylach.</translation>
    </message>
    <message>
        <source>As a leak the change would be %1, give or take %2.</source>
        <translation>Fel gollyngiad byddai’r newid yn %1, mwy neu lai %2.</translation>
    </message>
    <message>
        <source>A change of %1 in the gas&apos;s temperature alone could account for it.</source>
        <translation>Gallai newid o %1 yn nhymheredd y nwy yn unig gyfrif amdano.</translation>
    </message>
    <message>
        <source>Temperature would have to change by %1 to account for it, more than the %2 assumed.</source>
        <translation>Byddai’n rhaid i’r tymheredd newid %1 i gyfrif amdano, mwy na’r %2 a dybiwyd.</translation>
    </message>
    <message>
        <source>It fell while settling and kept on falling: a steady fall is a leak&apos;s, not a settling gas&apos;s.</source>
        <translation>Cwympodd wrth sefydlogi ac fe ddaliodd i gwympo: cwymp gollyngiad yw cwymp cyson, nid cwymp nwy sy’n sefydlogi.</translation>
    </message>
    <message>
        <source>Keep the gas off. Trace and repair, then test again from the start; or make safe.</source>
        <translation>Cadwch y nwy i ffwrdd. Dewch o hyd iddo a’i drwsio, yna profwch eto o’r dechrau; neu gwnewch yn ddiogel.</translation>
    </message>
    <message>
        <source>The two displays differ by %1, within one step of the gauge (%2).</source>
        <translation>Mae’r ddwy sgrin yn gwahaniaethu o %1, o fewn un cam o’r medrydd (%2).</translation>
    </message>
    <message>
        <source>The two displays differ by %1, more than one step of the gauge (%2). Read them again.</source>
        <translation>Mae’r ddwy sgrin yn gwahaniaethu o %1, mwy nag un cam o’r medrydd (%2). Darllenwch nhw eto.</translation>
    </message>
    <message>
        <source>A pilot was left lit and draws gas. Put it out and repeat the test.</source>
        <translation>Gadawyd peilot ynghyn ac mae’n tynnu nwy. Diffoddwch ef ac ailadroddwch y prawf.</translation>
    </message>
    <message>
        <source>Say whether the pilot lights were out.</source>
        <translation>Dywedwch a oedd y goleuadau peilot wedi’u diffodd.</translation>
    </message>
    <message>
        <source>Which drop applies is not known: the meter or a pipe&apos;s size is not said, or lies outside the table.</source>
        <translation>Nid yw’n hysbys pa gwymp sy’n berthnasol: nid yw’r mesurydd neu faint pibell wedi’i nodi, neu mae y tu allan i’r tabl.</translation>
    </message>
    <message>
        <source>At least %1 must pass the meter.</source>
        <translation>Rhaid i o leiaf %1 basio drwy’r mesurydd.</translation>
    </message>
    <message>
        <source>%1 passed the meter; at least %2 was needed.</source>
        <translation>Pasiodd %1 drwy’r mesurydd; roedd angen o leiaf %2.</translation>
    </message>
    <message>
        <source>Only %1 passed the meter; at least %2 is needed. Purge on.</source>
        <translation>Dim ond %1 a basiodd drwy’r mesurydd; mae angen o leiaf %2. Carthwch ymlaen.</translation>
    </message>
    <message>
        <source>The installation was not purged. Purge it before it is used, or leave it sealed.</source>
        <translation>Ni charthwyd y gosodiad. Carthwch ef cyn ei ddefnyddio, neu gadewch ef wedi’i selio.</translation>
    </message>
    <message>
        <source>No purge was needed: no air got in.</source>
        <translation>Nid oedd angen carthu: nid aeth aer i mewn.</translation>
    </message>
    <message>
        <source>At %1, above %2, purge through an open burner: light it as soon as it will, and keep trying.</source>
        <translation>Ar %1, uwchlaw %2, carthwch drwy losgydd agored: taniwch ef cyn gynted ag y bydd yn cynnau, a daliwch i geisio.</translation>
    </message>
    <message>
        <source>At %1, up to %2, it may be purged to a well-ventilated place with no source of ignition.</source>
        <translation>Ar %1, hyd at %2, gellir ei garthu i le wedi’i awyru’n dda heb ffynhonnell danio.</translation>
    </message>
    <message>
        <source>At %1, above %2, it had to be purged through an open burner.</source>
        <translation>Ar %1, uwchlaw %2, bu’n rhaid ei garthu drwy losgydd agored.</translation>
    </message>
    <message>
        <source>There is no steady flame at every appliance yet. Purge on until there is.</source>
        <translation>Nid oes fflam sefydlog ym mhob cyfarpar eto. Carthwch ymlaen nes bod.</translation>
    </message>
    <message>
        <source>The test point and every disturbed joint were proved with leak detection fluid and wiped.</source>
        <translation>Profwyd y pwynt prawf a phob uniad a darfwyd â hylif canfod gollyngiadau a’u sychu.</translation>
    </message>
    <message>
        <source>Prove the test point and every joint that was disturbed with leak detection fluid.</source>
        <translation>Profwch y pwynt prawf a phob uniad a darfwyd â hylif canfod gollyngiadau.</translation>
    </message>
    <message>
        <source>Wipe the leak detection fluid off: what stays can corrode the pipe.</source>
        <translation>Sychwch yr hylif canfod gollyngiadau ymaith: gall yr hyn sy’n aros gyrydu’r bibell.</translation>
    </message>
    <message>
        <source>Say whether the test point and the disturbed joints were proved and wiped.</source>
        <translation>Dywedwch a brofwyd ac a sychwyd y pwynt prawf a’r uniadau a darfwyd.</translation>
    </message>
    <message>
        <source>%1, within %2 to %3.</source>
        <translation>%1, o fewn %2 i %3.</translation>
    </message>
    <message>
        <source>%1, outside %2 to %3.</source>
        <translation>%1, y tu allan i %2 i %3.</translation>
    </message>
    <message>
        <source>The regulator locks up at %1, not above %2.</source>
        <translation>Mae’r rheolydd yn cloi ar %1, heb fod uwchlaw %2.</translation>
    </message>
    <message>
        <source>The regulator locks up at %1, above %2. Have it put right.</source>
        <translation>Mae’r rheolydd yn cloi ar %1, uwchlaw %2. Sicrhewch ei fod yn cael ei unioni.</translation>
    </message>
    <message>
        <source>Open-flued: (%1 − %2) × %3 cm²/kW = %4.</source>
        <translation>Ffliw agored: (%1 − %2) × %3 cm²/kW = %4.</translation>
    </message>
    <message>
        <source>%1 × %2 cm²/kW = %3.</source>
        <translation>%1 × %2 cm²/kW = %3.</translation>
    </message>
    <message>
        <source>Flueless heater: %1 + (%2 − %3) × %4 cm²/kW = %5.</source>
        <translation>Gwresogydd di-ffliw: %1 + (%2 − %3) × %4 cm²/kW = %5.</translation>
    </message>
    <message>
        <source>Cabinet heater, at high and at low level each: %1 × %2 cm²/kW, at least %3: %4.</source>
        <translation>Gwresogydd cabinet, ar lefel uchel ac ar lefel isel yr un: %1 × %2 cm²/kW, o leiaf %3: %4.</translation>
    </message>
    <message>
        <source>Cooker in a room of %1: %2.</source>
        <translation>Popty mewn ystafell o %1: %2.</translation>
    </message>
    <message>
        <source>Flueless water heater in a room of %1: %2.</source>
        <translation>Gwresogydd dŵr di-ffliw mewn ystafell o %1: %2.</translation>
    </message>
    <message>
        <source>Decorative fuel effect fire: %1.</source>
        <translation>Tân nwy addurniadol: %1.</translation>
    </message>
    <message>
        <source>A radiant or inset fire of %1 asks for no vent (up to %2).</source>
        <translation>Nid oes angen awyrell ar dân pelydrol neu fewnosod o %1 (hyd at %2).</translation>
    </message>
    <message>
        <source>Flueless tumble dryer: %1.</source>
        <translation>Sychwr dillad di-ffliw: %1.</translation>
    </message>
    <message>
        <source>The maker asks for %1.</source>
        <translation>Mae’r gwneuthurwr yn gofyn am %1.</translation>
    </message>
    <message>
        <source>A room-sealed appliance takes its air from outside and asks for no vent in a room.</source>
        <translation>Mae cyfarpar seliedig o’r ystafell yn cymryd ei aer o’r tu allan ac nid oes angen awyrell mewn ystafell arno.</translation>
    </message>
    <message>
        <source>Several appliances: flueless heaters %1, open-flued heaters %2, largest other %3; what counts is %4.</source>
        <translation>Sawl cyfarpar: gwresogyddion di-ffliw %1, gwresogyddion ffliw agored %2, yr un arall mwyaf %3; yr hyn sy’n cyfrif yw %4.</translation>
    </message>
    <message>
        <source>Through an inside wall %1 counts as %1 ÷ %2 = %3.</source>
        <translation>Drwy wal fewnol mae %1 yn cyfrif fel %1 ÷ %2 = %3.</translation>
    </message>
    <message>
        <source>%1 gross ÷ %2 = %3 net.</source>
        <translation>%1 gros ÷ %2 = %3 net.</translation>
    </message>
    <message>
        <source>The room has %1, which may be %2 less by its last digit: %3 is taken.</source>
        <translation>Mae gan yr ystafell %1, a all fod %2 yn llai yn ôl ei ddigid olaf: cymerir %3.</translation>
    </message>
    <message>
        <source>How a decorative fire counts beside other open-flued appliances has not been read: its whole vent is added here, which is the stricter way.</source>
        <translation>Ni ddarllenwyd sut y mae tân addurniadol yn cyfrif wrth ymyl cyfarpar ffliw agored eraill: ychwanegir ei awyrell gyfan yma, sef y ffordd lemach.</translation>
    </message>
    <message>
        <source>Needed: %1 of free area, straight to outside.</source>
        <translation>Mae angen: %1 o arwynebedd rhydd, yn syth i’r tu allan.</translation>
    </message>
    <message>
        <source>%1 of free area is there; %2 is needed.</source>
        <translation>Mae %1 o arwynebedd rhydd yno; mae angen %2.</translation>
    </message>
    <message>
        <source>Only %1 of free area is there; %2 is needed. Enlarge the vent before the appliance is used.</source>
        <translation>Dim ond %1 o arwynebedd rhydd sydd yno; mae angen %2. Ehangwch yr awyrell cyn defnyddio’r cyfarpar.</translation>
    </message>
    <message>
        <source>%1 of free area is there, %2 is needed: too near to tell (±%3). Measure the vent again or enlarge it.</source>
        <translation>Mae %1 o arwynebedd rhydd yno, mae angen %2: rhy agos i ddweud (±%3). Mesurwch yr awyrell eto neu ehangwch hi.</translation>
    </message>
    <message>
        <source>No vent is asked for here.</source>
        <translation>Nid oes angen awyrell yma.</translation>
    </message>
    <message>
        <source>The net heat input of an appliance is missing.</source>
        <translation>Mae mewnbwn gwres net cyfarpar ar goll.</translation>
    </message>
    <message>
        <source>The kind of an appliance, or its flue, has not been said, or no rule fits it: go by the maker&apos;s instructions.</source>
        <translation>Nid yw math cyfarpar, neu ei ffliw, wedi’i nodi, neu nid oes rheol yn ei ffitio: dilynwch gyfarwyddiadau’r gwneuthurwr.</translation>
    </message>
    <message>
        <source>The room&apos;s volume is missing.</source>
        <translation>Mae cyfaint yr ystafell ar goll.</translation>
    </message>
    <message>
        <source>Not said whether this is a room or an internal space such as a hall.</source>
        <translation>Heb nodi ai ystafell neu ofod mewnol megis cyntedd yw hwn.</translation>
    </message>
    <message>
        <source>The vents there, or the free area of one of them, are missing.</source>
        <translation>Mae’r awyrellau yno, neu arwynebedd rhydd un ohonynt, ar goll.</translation>
    </message>
    <message>
        <source>Not said where a vent leads: straight to outside, or through an inside wall.</source>
        <translation>Heb nodi i ble mae awyrell yn arwain: yn syth i’r tu allan, neu drwy wal fewnol.</translation>
    </message>
    <message>
        <source>Not said whether a vent is at high or at low level.</source>
        <translation>Heb nodi a yw awyrell ar lefel uchel neu ar lefel isel.</translation>
    </message>
    <message>
        <source>No appliance has been entered for this space.</source>
        <translation>Nid oes cyfarpar wedi’i nodi ar gyfer y gofod hwn.</translation>
    </message>
    <message>
        <source>Not said what the appliances stand in: a room, a hall, a compartment or a boiler room. Each has its own rule.</source>
        <translation>Heb nodi ym mha beth y mae’r cyfarpar yn sefyll: ystafell, cyntedd, adran neu ystafell foeleri. Mae gan bob un ei reol ei hun.</translation>
    </message>
    <message>
        <source>Choose the gas: a gross heat input becomes net by the ratio of that gas.</source>
        <translation>Dewiswch y nwy: daw mewnbwn gwres gros yn net drwy gymhareb y nwy hwnnw.</translation>
    </message>
    <message>
        <source>Not said whether a door opens straight to outside.</source>
        <translation>Heb nodi a yw drws yn agor yn syth i’r tu allan.</translation>
    </message>
    <message>
        <source>Not said whether the dwelling is built tight (air permeability 5 m³/(h·m²) or less). If it is, more may be needed.</source>
        <translation>Heb nodi a yw’r annedd wedi’i hadeiladu’n dynn (athreiddedd aer 5 m³/(h·m²) neu lai). Os ydyw, gall fod angen mwy.</translation>
    </message>
    <message>
        <source>In a dwelling built tight (air permeability 5 m³/(h·m²) or less) more may be needed than the usual rule says. Enter the rule from your own copy, or go by the maker.</source>
        <translation>Mewn annedd wedi’i hadeiladu’n dynn (athreiddedd aer 5 m³/(h·m²) neu lai) gall fod angen mwy nag y mae’r rheol arferol yn ei ddweud. Nodwch y rheol o’ch copi eich hun, neu dilynwch y gwneuthurwr.</translation>
    </message>
    <message>
        <source>Straight to outside there is %1 of %2; whether a flueless appliance may take the rest through an inside wall has not been read. Look it up.</source>
        <translation>Yn syth i’r tu allan mae %1 o %2; ni ddarllenwyd a gaiff cyfarpar di-ffliw gymryd y gweddill drwy wal fewnol. Chwiliwch amdano.</translation>
    </message>
    <message>
        <source>The high and the low vents must lead to the same place: both to the room, or both to outside.</source>
        <translation>Rhaid i’r awyrellau uchel ac isel arwain i’r un lle: y ddwy i’r ystafell, neu’r ddwy i’r tu allan.</translation>
    </message>
    <message>
        <source>The room that gives air to this compartment needs its own vent for the open-flued appliance.</source>
        <translation>Mae angen ei hawyrell ei hun ar yr ystafell sy’n rhoi aer i’r adran hon, ar gyfer y cyfarpar ffliw agored.</translation>
    </message>
    <message>
        <source>Open-flued and room-sealed stand together: the open-flued row is taken for all.</source>
        <translation>Mae cyfarpar ffliw agored a seliedig o’r ystafell yn sefyll gyda’i gilydd: cymerir y rhes ffliw agored ar gyfer pob un.</translation>
    </message>
    <message>
        <source>A window or door that opens to outside is there.</source>
        <translation>Mae ffenestr neu ddrws sy’n agor i’r tu allan yno.</translation>
    </message>
    <message>
        <source>A flueless appliance needs a window, a door or the like that opens to outside. There is none: not to be used here.</source>
        <translation>Mae angen ffenestr, drws neu debyg sy’n agor i’r tu allan ar gyfarpar di-ffliw. Nid oes un: ni ddylid ei ddefnyddio yma.</translation>
    </message>
    <message>
        <source>Not said whether a window or door opens to outside.</source>
        <translation>Heb nodi a oes ffenestr neu ddrws yn agor i’r tu allan.</translation>
    </message>
    <message>
        <source>The vents are open, can&apos;t be closed, and have no fly-screen.</source>
        <translation>Mae’r awyrellau ar agor, ni ellir eu cau, ac nid oes sgrin bryfed arnynt.</translation>
    </message>
    <message>
        <source>A vent is blocked. Clear it before the appliance is used.</source>
        <translation>Mae awyrell wedi’i blocio. Cliriwch hi cyn defnyddio’r cyfarpar.</translation>
    </message>
    <message>
        <source>A vent can be closed. Fit one that can&apos;t.</source>
        <translation>Gellir cau awyrell. Gosodwch un na ellir ei chau.</translation>
    </message>
    <message>
        <source>A vent has a fly-screen or gauze that clogs. Take it out or change the vent.</source>
        <translation>Mae gan awyrell sgrin bryfed neu rwyllen sy’n tagu. Tynnwch hi neu newidiwch yr awyrell.</translation>
    </message>
    <message>
        <source>A vent is blocked, can be closed, or has a fly-screen. Put it right before the appliance is used.</source>
        <translation>Mae awyrell wedi’i blocio, gellir ei chau, neu mae sgrin bryfed arni. Unionwch hi cyn defnyddio’r cyfarpar.</translation>
    </message>
    <message>
        <source>A vent through a cavity wall has no sleeve: its air may come from the cavity. Sleeve it.</source>
        <translation>Nid oes llawes gan awyrell drwy wal geudod: gall ei haer ddod o’r ceudod. Rhowch lawes arni.</translation>
    </message>
    <message>
        <source>Not said of every vent whether it is open, can be closed, or has a fly-screen.</source>
        <translation>Heb nodi am bob awyrell a yw ar agor, a ellir ei chau, neu a oes sgrin bryfed arni.</translation>
    </message>
    <message>
        <source>%1 net stands in this space; the domestic standard goes to %2.</source>
        <translation>Mae %1 net yn sefyll yn y gofod hwn; mae’r safon ddomestig yn mynd hyd %2.</translation>
    </message>
    <message>
        <source>%1 net stands in this space, at or near %2: say which standard applies.</source>
        <translation>Mae %1 net yn sefyll yn y gofod hwn, ar %2 neu’n agos ato: dywedwch pa safon sy’n berthnasol.</translation>
    </message>
    <message>
        <source>%1 net stands in this space; the domestic standard ends at %2. Use the standard for larger boilers.</source>
        <translation>Mae %1 net yn sefyll yn y gofod hwn; mae’r safon ddomestig yn gorffen ar %2. Defnyddiwch y safon ar gyfer boeleri mwy.</translation>
    </message>
    <message>
        <source>%1 net is more than the boiler room standard covers (%2). A specialist&apos;s design is needed.</source>
        <translation>Mae %1 net yn fwy nag y mae safon yr ystafell foeleri yn ei gwmpasu (%2). Mae angen dyluniad arbenigwr.</translation>
    </message>
    <message>
        <source>%1 net stands in this space; the boiler room standard goes to %2.</source>
        <translation>Mae %1 net yn sefyll yn y gofod hwn; mae safon yr ystafell foeleri yn mynd hyd %2.</translation>
    </message>
    <message>
        <source>This rule is for vents straight to outside, and one of these leads elsewhere: a specialist&apos;s design is needed.</source>
        <translation>Mae’r rheol hon ar gyfer awyrellau yn syth i’r tu allan, ac mae un o’r rhain yn arwain i rywle arall: mae angen dyluniad arbenigwr.</translation>
    </message>
    <message>
        <source>This rule is for open-flued boilers, and one of these is not, or its flue has not been said: go by the maker.</source>
        <translation>Mae’r rheol hon ar gyfer boeleri ffliw agored, ac nid yw un o’r rhain felly, neu nid yw ei ffliw wedi’i nodi: dilynwch y gwneuthurwr.</translation>
    </message>
    <message>
        <source>Not said whether this is a boiler room or an enclosure, or how much of the summer the boilers run.</source>
        <translation>Heb nodi ai ystafell foeleri neu loc yw hwn, na faint o’r haf y mae’r boeleri’n rhedeg.</translation>
    </message>
    <message>
        <source>The room has %1; at least %2 is asked for.</source>
        <translation>Mae gan yr ystafell %1; gofynnir am o leiaf %2.</translation>
    </message>
    <message>
        <source>The room has only %1; the appliance is not allowed below %2.</source>
        <translation>Dim ond %1 sydd gan yr ystafell; ni chaniateir y cyfarpar islaw %2.</translation>
    </message>
    <message>
        <source>The room has %1, at or near the least of %2: measure it again.</source>
        <translation>Mae gan yr ystafell %1, ar y lleiafswm o %2 neu’n agos ato: mesurwch hi eto.</translation>
    </message>
    <message>
        <source>Not said whether this is a bed-sitting room.</source>
        <translation>Heb nodi ai ystafell fyw a chysgu yw hon.</translation>
    </message>
    <message>
        <source>%1 net is allowed here; the most is %2.</source>
        <translation>Caniateir %1 net yma; y mwyaf yw %2.</translation>
    </message>
    <message>
        <source>%1 net is more than is allowed here: %2.</source>
        <translation>Mae %1 net yn fwy nag a ganiateir yma: %2.</translation>
    </message>
    <message>
        <source>%1 net is at or near the most allowed here, %2.</source>
        <translation>Mae %1 net ar y mwyaf a ganiateir yma, %2, neu’n agos ato.</translation>
    </message>
    <message>
        <source>%1 of free area is there; %2 is advised for a cooker in a basement.</source>
        <translation>Mae %1 o arwynebedd rhydd yno; cynghorir %2 ar gyfer popty mewn islawr.</translation>
    </message>
    <message>
        <source>Only %1 of free area is there; %2 is advised for a cooker in a basement, whatever the volume.</source>
        <translation>Dim ond %1 o arwynebedd rhydd sydd yno; cynghorir %2 ar gyfer popty mewn islawr, beth bynnag y cyfaint.</translation>
    </message>
    <message>
        <source>%1 is not above %2.</source>
        <translation>Nid yw %1 uwchlaw %2.</translation>
    </message>
    <message>
        <source>%1 is above %2: more air is needed to carry the heat away.</source>
        <translation>Mae %1 uwchlaw %2: mae angen mwy o aer i gario’r gwres ymaith.</translation>
    </message>
    <message>
        <source>%1 is at or near %2: measure it again.</source>
        <translation>Mae %1 ar %2 neu’n agos ato: mesurwch eto.</translation>
    </message>
    <message>
        <source>Danger: %1 of carbon monoxide was read (warning from %2). Get everyone out, turn the appliances off, open windows and doors if it is safe to, get medical help for anyone who feels ill, then ring the gas emergency service (LPG: the supplier&apos;s emergency number).</source>
        <translation>Perygl: darllenwyd %1 o garbon monocsid (rhybudd o %2). Ewch â phawb allan, trowch y cyfarpar i ffwrdd, agorwch ffenestri a drysau os yw’n ddiogel gwneud hynny, ceisiwch gymorth meddygol i unrhyw un sy’n teimlo’n sâl, yna ffoniwch y gwasanaeth argyfwng nwy (LPG: rhif argyfwng y cyflenwr).</translation>
    </message>
    <message>
        <source>%1 of carbon monoxide was read (warning from %2). Turn the appliances off, open the windows, and find the source before going on.</source>
        <translation>Darllenwyd %1 o garbon monocsid (rhybudd o %2). Trowch y cyfarpar i ffwrdd, agorwch y ffenestri, a dewch o hyd i’r ffynhonnell cyn mynd ymlaen.</translation>
    </message>
    <message>
        <source>The highest reading was %1. The action levels are not in the rule book: enter them from your own copy of the standard. Until then there is no verdict.</source>
        <translation>Y darlleniad uchaf oedd %1. Nid yw’r lefelau gweithredu yn y llyfr rheolau: nodwch nhw o’ch copi eich hun o’r safon. Hyd hynny nid oes dyfarniad.</translation>
    </message>
    <message>
        <source>The highest reading was %1, not above %2, and not rising.</source>
        <translation>Y darlleniad uchaf oedd %1, heb fod uwchlaw %2, a heb fod yn codi.</translation>
    </message>
    <message>
        <source>The highest reading was %1, at or near %2: go on measuring.</source>
        <translation>Y darlleniad uchaf oedd %1, ar %2 neu’n agos ato: daliwch i fesur.</translation>
    </message>
    <message>
        <source>The highest reading was %1, above %2. Find the source: look at each appliance in turn.</source>
        <translation>Y darlleniad uchaf oedd %1, uwchlaw %2. Dewch o hyd i’r ffynhonnell: edrychwch ar bob cyfarpar yn ei dro.</translation>
    </message>
    <message>
        <source>The highest reading was %1; from %2 on the appliances go off, windows and doors are opened, everyone leaves, and the gas emergency service (LPG: the supplier&apos;s emergency number) is rung.</source>
        <translation>Y darlleniad uchaf oedd %1; o %2 ymlaen caiff y cyfarpar eu troi i ffwrdd, agorir ffenestri a drysau, mae pawb yn gadael, a ffonnir y gwasanaeth argyfwng nwy (LPG: rhif argyfwng y cyflenwr).</translation>
    </message>
    <message>
        <source>A cooker&apos;s peak of %1 (at most %2), since fallen to %3. Watch that it does not come back.</source>
        <translation>Brig popty o %1 (%2 ar y mwyaf), wedi cwympo ers hynny i %3. Gwyliwch nad yw’n dod yn ôl.</translation>
    </message>
    <message>
        <source>The readings are still rising: go on measuring until they hold or fall, and find the source.</source>
        <translation>Mae’r darlleniadau’n dal i godi: daliwch i fesur nes eu bod yn aros neu’n cwympo, a dewch o hyd i’r ffynhonnell.</translation>
    </message>
    <message>
        <source>Whether the readings rise or fall can&apos;t be told: go on measuring.</source>
        <translation>Ni ellir dweud a yw’r darlleniadau’n codi neu’n cwympo: daliwch i fesur.</translation>
    </message>
    <message>
        <source>Rising: %1 in the last %2 (±%3).</source>
        <translation>Yn codi: %1 yn y %2 olaf (±%3).</translation>
    </message>
    <message>
        <source>Steady: %1 in the last %2 (±%3).</source>
        <translation>Yn sefydlog: %1 yn y %2 olaf (±%3).</translation>
    </message>
    <message>
        <source>Falling: %1 in the last %2 (±%3).</source>
        <translation>Yn cwympo: %1 yn y %2 olaf (±%3).</translation>
    </message>
    <message>
        <source>The highest mean of %3 was %1; the limit for people at work is %2. It does not show that a home is safe.</source>
        <translation>Cymedr uchaf %3 oedd %1; y terfyn i bobl wrth eu gwaith yw %2. Nid yw’n dangos bod cartref yn ddiogel.</translation>
    </message>
    <message>
        <source>The highest mean of %3 was %1, at or near the limit for people at work of %2.</source>
        <translation>Cymedr uchaf %3 oedd %1, ar y terfyn o %2 i bobl wrth eu gwaith neu’n agos ato.</translation>
    </message>
    <message>
        <source>The highest mean of %3 was %1, above the limit for people at work of %2.</source>
        <translation>Cymedr uchaf %3 oedd %1, uwchlaw’r terfyn o %2 i bobl wrth eu gwaith.</translation>
    </message>
    <message>
        <source>The mean was %1 over the %2 that were measured. The limit is for %3; nothing is concluded for the time that was not measured.</source>
        <translation>Y cymedr oedd %1 dros y %2 a fesurwyd. Mae’r terfyn ar gyfer %3; ni chesglir dim am yr amser na fesurwyd.</translation>
    </message>
    <message>
        <source>The mean was %1 over the %2 that were measured, above the limit of %4 for %3. The time that was not measured is not counted.</source>
        <translation>Y cymedr oedd %1 dros y %2 a fesurwyd, uwchlaw’r terfyn o %4 ar gyfer %3. Ni chyfrifir yr amser na fesurwyd.</translation>
    </message>
    <message>
        <source>The %2 that were measured, at a mean of %1, already amount to more than %4 over %3, whatever follows.</source>
        <translation>Mae’r %2 a fesurwyd, ar gymedr o %1, eisoes yn gyfwerth â mwy na %4 dros %3, beth bynnag sy’n dilyn.</translation>
    </message>
    <message>
        <source>Up to %1 lies between two readings; what happened between them is not known.</source>
        <translation>Mae hyd at %1 rhwng dau ddarlleniad; nid yw’n hysbys beth a ddigwyddodd rhyngddynt.</translation>
    </message>
    <message>
        <source>For comparison: the World Health Organization&apos;s guideline is %1 for %2.</source>
        <translation>Er cymhariaeth: canllaw Sefydliad Iechyd y Byd yw %1 am %2.</translation>
    </message>
    <message>
        <source>The mean of %1 is above the World Health Organization&apos;s guideline of %2 for %3.</source>
        <translation>Mae’r cymedr o %1 uwchlaw canllaw Sefydliad Iechyd y Byd o %2 am %3.</translation>
    </message>
    <message>
        <source>At %1 a carbon monoxide alarm would sound: at %2 it must within %3. That is a threshold for saving lives, not a safe level.</source>
        <translation>Ar %1 byddai larwm carbon monocsid yn seinio: ar %2 rhaid iddo o fewn %3. Trothwy i achub bywydau yw hwnnw, nid lefel ddiogel.</translation>
    </message>
    <message>
        <source>%1 was read outdoors first.</source>
        <translation>Darllenwyd %1 y tu allan yn gyntaf.</translation>
    </message>
    <message>
        <source>%1 was read outdoors: zero the instrument in clean air, or find out why.</source>
        <translation>Darllenwyd %1 y tu allan: serowch yr offeryn mewn aer glân, neu darganfyddwch pam.</translation>
    </message>
    <message>
        <source>No reading outdoors was taken first: zero the instrument outdoors and note the reading there.</source>
        <translation>Ni chymerwyd darlleniad y tu allan yn gyntaf: serowch yr offeryn y tu allan a nodwch y darlleniad yno.</translation>
    </message>
    <message>
        <source>The reading outdoors was not the first one.</source>
        <translation>Nid y darlleniad y tu allan oedd yr un cyntaf.</translation>
    </message>
    <message>
        <source>No reading in the room has been entered.</source>
        <translation>Nid oes darlleniad yn yr ystafell wedi’i nodi.</translation>
    </message>
    <message>
        <source>Not said where reading %1 was taken: it is counted as in the room, and nothing passes.</source>
        <translation>Heb nodi lle cymerwyd darlleniad %1: fe’i cyfrifir fel pe bai yn yr ystafell, ac nid oes dim yn pasio.</translation>
    </message>
    <message>
        <source>Not said when reading %1 was taken: it is put with the one before, and nothing passes.</source>
        <translation>Heb nodi pryd cymerwyd darlleniad %1: fe’i rhoddir gyda’r un o’i flaen, ac nid oes dim yn pasio.</translation>
    </message>
    <message>
        <source>Reading %1 has no figure: nothing passes until it is there or its line is empty.</source>
        <translation>Nid oes ffigur gan ddarlleniad %1: nid oes dim yn pasio nes ei fod yno neu fod ei linell yn wag.</translation>
    </message>
    <message>
        <source>Reading %1 is earlier than the one before it: check the times.</source>
        <translation>Mae darlleniad %1 yn gynharach na’r un o’i flaen: gwiriwch yr amserau.</translation>
    </message>
    <message>
        <source>The readings were taken from outside the room.</source>
        <translation>Cymerwyd y darlleniadau o’r tu allan i’r ystafell.</translation>
    </message>
    <message>
        <source>Sampled at %1 height, %2 from the appliance, for %3.</source>
        <translation>Samplwyd ar uchder %1, %2 o’r cyfarpar, am %3.</translation>
    </message>
    <message>
        <source>Sampled at %1; the standard asks for %2.</source>
        <translation>Samplwyd ar %1; mae’r safon yn gofyn am %2.</translation>
    </message>
    <message>
        <source>Sampled %1 from the appliance; at least %2 is asked for.</source>
        <translation>Samplwyd %1 o’r cyfarpar; gofynnir am o leiaf %2.</translation>
    </message>
    <message>
        <source>Sampled for %1; at least %2 is asked for.</source>
        <translation>Samplwyd am %1; gofynnir am o leiaf %2.</translation>
    </message>
    <message>
        <source>Nothing can be concluded from these readings about anyone&apos;s blood: the estimate is only of an order, and people may have been there longer. Anyone who feels ill needs a doctor now.</source>
        <translation>Ni ellir casglu dim o’r darlleniadau hyn am waed neb: o ran maint yn unig y mae’r amcangyfrif, a gall pobl fod wedi bod yno’n hwy. Mae angen meddyg nawr ar unrhyw un sy’n teimlo’n sâl.</translation>
    </message>
    <message>
        <source>Exposure of this order (%1) can raise carbon monoxide in the blood above %2 within an hour. Keep people out and get medical advice for anyone who was there.</source>
        <translation>Gall amlygiad o’r maint hwn (%1) godi carbon monocsid yn y gwaed uwchlaw %2 o fewn awr. Cadwch bobl allan a cheisiwch gyngor meddygol i unrhyw un a fu yno.</translation>
    </message>
    <message>
        <source>Exposure like this is dangerous: it can have raised carbon monoxide in the blood above %1 already. Get medical help for everyone who was there.</source>
        <translation>Mae amlygiad fel hyn yn beryglus: gall fod wedi codi carbon monocsid yn y gwaed uwchlaw %1 eisoes. Ceisiwch gymorth meddygol i bawb a fu yno.</translation>
    </message>
    <message>
        <source>Pregnant women, children and people with heart disease are harmed sooner.</source>
        <translation>Caiff menywod beichiog, plant a phobl â chlefyd y galon eu niweidio’n gynt.</translation>
    </message>
    <message>
        <source>The gas rate is %1; reading and timing leave ±%2.</source>
        <translation>Y gyfradd nwy yw %1; mae darllen ac amseru yn gadael ±%2.</translation>
    </message>
    <message>
        <source>The gas rate is %1, but reading and timing leave ±%2. For ±%3 time at least %4.</source>
        <translation>Y gyfradd nwy yw %1, ond mae darllen ac amseru yn gadael ±%2. Ar gyfer ±%3 amserwch o leiaf %4.</translation>
    </message>
    <message>
        <source>The gas rate is %1, but known only to ±%2, and no timing within a day makes it better: this meter is too coarse for it.</source>
        <translation>Y gyfradd nwy yw %1, ond dim ond i ±%2 y mae’n hysbys, ac nid oes amseru o fewn diwrnod a’i gwella: mae’r mesurydd hwn yn rhy fras.</translation>
    </message>
    <message>
        <source>There is no meter, so the heat input can&apos;t be taken. Read the operating pressure; where that can&apos;t be read, check the combustion and write down why.</source>
        <translation>Nid oes mesurydd, felly ni ellir cymryd y mewnbwn gwres. Darllenwch y pwysedd gweithredu; lle na ellir darllen hwnnw, gwiriwch y hylosgi ac ysgrifennwch pam.</translation>
    </message>
    <message>
        <source>The time must be longer than nothing. Enter what the stopwatch showed.</source>
        <translation>Rhaid i’r amser fod yn hwy na dim. Nodwch yr hyn a ddangosodd y stopwats.</translation>
    </message>
    <message>
        <source>The index runs backwards, from %1 to %2. Read it again; if it came back to nought in between, say so.</source>
        <translation>Mae’r mynegai’n rhedeg yn ôl, o %1 i %2. Darllenwch ef eto; os daeth yn ôl i sero yn y cyfamser, dywedwch hynny.</translation>
    </message>
    <message>
        <source>No gas passed in the time. Check the two readings, and that the burner was lit.</source>
        <translation>Ni phasiodd nwy yn ystod yr amser. Gwiriwch y ddau ddarlleniad, a bod y llosgydd ynghyn.</translation>
    </message>
    <message>
        <source>No meter passes so much. Check the decimal point and the unit.</source>
        <translation>Nid oes mesurydd yn pasio cymaint. Gwiriwch y pwynt degol a’r uned.</translation>
    </message>
    <message>
        <source>A turn of the test dial is 1, 2, 5 or 10 ft³, and at least one whole turn is timed. Read what the dial says.</source>
        <translation>Mae tro o’r deial prawf yn 1, 2, 5 neu 10 ft³, ac amserir o leiaf un tro cyfan. Darllenwch yr hyn a ddywed y deial.</translation>
    </message>
    <message>
        <source>Another appliance took gas too. Turn all others off, pilots too, and time it again.</source>
        <translation>Cymerodd cyfarpar arall nwy hefyd. Trowch bob un arall i ffwrdd, y peilotiaid hefyd, ac amserwch eto.</translation>
    </message>
    <message>
        <source>The burner was not at its full rate. Set it to maximum and time it again.</source>
        <translation>Nid oedd y llosgydd ar ei gyfradd lawn. Gosodwch ef i’r uchaf ac amserwch eto.</translation>
    </message>
    <message>
        <source>The appliance was cold, and a cold one passes more gas. Let it warm up and time it again.</source>
        <translation>Roedd y cyfarpar yn oer, ac mae un oer yn pasio mwy o nwy. Gadewch iddo gynhesu ac amserwch eto.</translation>
    </message>
    <message>
        <source>Say whether all others were off, the burner at full rate and the appliance warm.</source>
        <translation>Dywedwch a oedd pob un arall i ffwrdd, y llosgydd ar gyfradd lawn a’r cyfarpar yn gynnes.</translation>
    </message>
    <message>
        <source>The gas rate of %1 is above the meter&apos;s own %2. Check the readings; if they are right, the meter is too small.</source>
        <translation>Mae’r gyfradd nwy o %1 uwchlaw %2 y mesurydd ei hun. Gwiriwch y darlleniadau; os ydynt yn gywir, mae’r mesurydd yn rhy fach.</translation>
    </message>
    <message>
        <source>The gas rate of %1 is below %2, from where the meter&apos;s accuracy is known.</source>
        <translation>Mae’r gyfradd nwy o %1 islaw %2, lle dechreua cywirdeb y mesurydd fod yn hysbys.</translation>
    </message>
    <message>
        <source>The meter&apos;s own ±%1 comes on top; the figures and the heat input count it.</source>
        <translation>Daw ±%1 y mesurydd ei hun ar ben hyn; mae’r ffigurau a’r mewnbwn gwres yn ei gyfrif.</translation>
    </message>
    <message>
        <source>The meter&apos;s own ±%1 comes on top; it is not counted.</source>
        <translation>Daw ±%1 y mesurydd ei hun ar ben hyn; nis cyfrifir.</translation>
    </message>
    <message>
        <source>The heat input is %1 off the plate&apos;s; up to %2 is allowed, and it is known to ±%3.</source>
        <translation>Mae’r mewnbwn gwres %1 oddi ar un y plât; caniateir hyd at %2, ac mae’n hysbys i ±%3.</translation>
    </message>
    <message>
        <source>The heat input is %1 off the plate&apos;s: too near the %2 allowed to tell, known only to ±%3. Time it longer.</source>
        <translation>Mae’r mewnbwn gwres %1 oddi ar un y plât: rhy agos at y %2 a ganiateir i ddweud, gan mai dim ond i ±%3 y mae’n hysbys. Amserwch yn hwy.</translation>
    </message>
    <message>
        <source>Over-rated: the heat input is %1 above the plate&apos;s; %2 is allowed (known to ±%3). Check the burner pressure and the injectors against the maker&apos;s figures; if they are right, ask the maker. Don&apos;t leave it over-rated.</source>
        <translation>Gorgyfradd: mae’r mewnbwn gwres %1 uwchlaw un y plât; caniateir %2 (hysbys i ±%3). Gwiriwch bwysedd y llosgydd a’r chwistrellwyr yn erbyn ffigurau’r gwneuthurwr; os ydynt yn gywir, gofynnwch i’r gwneuthurwr. Peidiwch â’i adael ar orgyfradd.</translation>
    </message>
    <message>
        <source>Under-rated: the heat input is %1 below the plate&apos;s; %2 is allowed (known to ±%3). Check the inlet pressure at full load, the burner pressure and the injectors for dirt or a wrong size; if they are right, ask the maker.</source>
        <translation>Tangyfradd: mae’r mewnbwn gwres %1 islaw un y plât; caniateir %2 (hysbys i ±%3). Gwiriwch bwysedd y fewnfa ar lwyth llawn, pwysedd y llosgydd a’r chwistrellwyr am faw neu faint anghywir; os ydynt yn gywir, gofynnwch i’r gwneuthurwr.</translation>
    </message>
    <message>
        <source>Gross with gross: %1, the plate&apos;s %2.</source>
        <translation>Gros gyda gros: %1, y plât %2.</translation>
    </message>
    <message>
        <source>Net with net: %1, the plate&apos;s %2.</source>
        <translation>Net gyda net: %1, y plât %2.</translation>
    </message>
    <message>
        <source>The heat input is %1 gross, %2 net.</source>
        <translation>Y mewnbwn gwres yw %1 gros, %2 net.</translation>
    </message>
    <message>
        <source>The heat input is %1 gross. The net one needs the gas&apos;s ratio of gross to net.</source>
        <translation>Y mewnbwn gwres yw %1 gros. Ar gyfer yr un net mae angen cymhareb gros i net y nwy.</translation>
    </message>
    <message>
        <source>Enter the calorific value of the gas: it stands on the bill.</source>
        <translation>Nodwch werth caloriffig y nwy: mae ar y bil.</translation>
    </message>
    <message>
        <source>Enter the heat input on the appliance&apos;s plate, and whether it is gross or net.</source>
        <translation>Nodwch y mewnbwn gwres ar blât y cyfarpar, ac ai gros neu net ydyw.</translation>
    </message>
    <message>
        <source>Say whether the plate&apos;s heat input is gross or net: they differ by about a tenth.</source>
        <translation>Dywedwch ai gros neu net yw mewnbwn gwres y plât: maent yn gwahaniaethu o ryw ddegfed ran.</translation>
    </message>
    <message>
        <source>The two-minute shortcut gives %1 gross.</source>
        <translation>Mae’r dull cyflym dwy funud yn rhoi %1 gros.</translation>
    </message>
    <message>
        <source>The metered volume was not corrected to standard conditions; at usual pressures that makes the heat input look about 2 % too small.</source>
        <translation>Ni chywirwyd y cyfaint a fesurwyd i amodau safonol; ar bwyseddau arferol mae hynny’n gwneud i’r mewnbwn gwres edrych tua 2 % yn rhy fach.</translation>
    </message>
    <message>
        <source>The metered volume was corrected by the fixed factor of bills, %1.</source>
        <translation>Cywirwyd y cyfaint a fesurwyd â ffactor sefydlog biliau, %1.</translation>
    </message>
    <message>
        <source>The metered volume was corrected by pressure, temperature and altitude, factor %1.</source>
        <translation>Cywirwyd y cyfaint a fesurwyd yn ôl pwysedd, tymheredd ac uchder, ffactor %1.</translation>
    </message>
    <message>
        <source>%1 falls off between meter and appliance; up to %2 is allowed, and it is known to ±%3.</source>
        <translation>Mae %1 yn cwympo rhwng y mesurydd a’r cyfarpar; caniateir hyd at %2, ac mae’n hysbys i ±%3.</translation>
    </message>
    <message>
        <source>%1 falls off between meter and appliance, not above %2, but with less than the full load. Read it again with every appliance at its high load.</source>
        <translation>Mae %1 yn cwympo rhwng y mesurydd a’r cyfarpar, heb fod uwchlaw %2, ond gyda llai na’r llwyth llawn. Darllenwch eto gyda phob cyfarpar ar ei lwyth uchel.</translation>
    </message>
    <message>
        <source>%1 falls off between meter and appliance; %2 is allowed (known to ±%3). Look for a valve not fully open, a blockage, or pipe too small.</source>
        <translation>Mae %1 yn cwympo rhwng y mesurydd a’r cyfarpar; caniateir %2 (hysbys i ±%3). Chwiliwch am falf heb fod ar agor yn llawn, rhwystr, neu bibell rhy fach.</translation>
    </message>
    <message>
        <source>Say what was running while the pressures were read.</source>
        <translation>Dywedwch beth oedd yn rhedeg tra darllenwyd y pwyseddau.</translation>
    </message>
    <message>
        <source>The standing pressure, %1, is below the working pressure, %2. Read both again.</source>
        <translation>Mae’r pwysedd sefydlog, %1, islaw’r pwysedd gweithio, %2. Darllenwch y ddau eto.</translation>
    </message>
    <message>
        <source>The working pressure counts with the burner at full rate. Set it to maximum and read again.</source>
        <translation>Mae’r pwysedd gweithio’n cyfrif gyda’r llosgydd ar gyfradd lawn. Gosodwch ef i’r uchaf a darllenwch eto.</translation>
    </message>
    <message>
        <source>%1 is too near an end of %2 to %3 to tell. Read it again with a finer or better gauge.</source>
        <translation>Mae %1 yn rhy agos at un pen o %2 i %3 i ddweud. Darllenwch eto â medrydd manylach neu well.</translation>
    </message>
    <message>
        <source>Only the maker&apos;s figure can judge the burner pressure. Enter it from the maker&apos;s instructions.</source>
        <translation>Dim ond ffigur y gwneuthurwr a all farnu pwysedd y llosgydd. Nodwch ef o gyfarwyddiadau’r gwneuthurwr.</translation>
    </message>
    <message>
        <source>On average %1 at the meter, within %2 to %3.</source>
        <translation>Ar gyfartaledd %1 wrth y mesurydd, o fewn %2 i %3.</translation>
    </message>
    <message>
        <source>On average %1 at the meter, outside %2 to %3. Tell the gas transporter or the meter operator if it stays so.</source>
        <translation>Ar gyfartaledd %1 wrth y mesurydd, y tu allan i %2 i %3. Dywedwch wrth y cludwr nwy neu weithredwr y mesurydd os yw’n aros felly.</translation>
    </message>
    <message>
        <source>The average was taken over %1; %2 are asked for.</source>
        <translation>Cymerwyd y cyfartaledd dros %1; gofynnir am %2.</translation>
    </message>
    <message>
        <source>For information: a proposal of 2019, which differs from 19 to 23 mbar at the meter. Write down which one was used.</source>
        <translation>Er gwybodaeth: cynnig o 2019, sy’n wahanol i 19 i 23 mbar wrth y mesurydd. Ysgrifennwch pa un a ddefnyddiwyd.</translation>
    </message>
    <message>
        <source>%1 hot water, not below the maker&apos;s %2 (known to ±%3).</source>
        <translation>%1 o ddŵr poeth, heb fod islaw %2 y gwneuthurwr (hysbys i ±%3).</translation>
    </message>
    <message>
        <source>%1 hot water, below the maker&apos;s %2 (known to ±%3). Check the heat input, the flow setting, and the heat exchanger for scale.</source>
        <translation>%1 o ddŵr poeth, islaw %2 y gwneuthurwr (hysbys i ±%3). Gwiriwch y mewnbwn gwres, gosodiad y llif, a’r cyfnewidydd gwres am gen.</translation>
    </message>
    <message>
        <source>The water takes up %1. Enter the maker&apos;s figure to have it judged.</source>
        <translation>Mae’r dŵr yn derbyn %1. Nodwch ffigur y gwneuthurwr er mwyn ei farnu.</translation>
    </message>
    <message>
        <source>Hot water counts with the burner at its maximum: say so, or open the tap further and read again.</source>
        <translation>Mae dŵr poeth yn cyfrif gyda’r llosgydd ar ei uchaf: dywedwch hynny, neu agorwch y tap ymhellach a darllenwch eto.</translation>
    </message>
    <message>
        <source>The water takes up %1.</source>
        <translation>Mae’r dŵr yn derbyn %1.</translation>
    </message>
    <message>
        <source>Hot water takes up %1 of the net heat input, within the usual %2 to %3.</source>
        <translation>Mae dŵr poeth yn derbyn %1 o’r mewnbwn gwres net, o fewn y %2 i %3 arferol.</translation>
    </message>
    <message>
        <source>Hot water takes up %1 of the net heat input, outside the usual %2 to %3. Read the flow and both temperatures again, then time the gas again.</source>
        <translation>Mae dŵr poeth yn derbyn %1 o’r mewnbwn gwres net, y tu allan i’r %2 i %3 arferol. Darllenwch y llif a’r ddau dymheredd eto, yna amserwch y nwy eto.</translation>
    </message>
    <message>
        <source>Flue, combustion air, pressure or heat input, and operation were examined.</source>
        <translation>Archwiliwyd y ffliw, yr aer hylosgi, y pwysedd neu’r mewnbwn gwres, a’r gweithrediad.</translation>
    </message>
    <message>
        <source>26(9)(a): Examine whether the flue is effective, or say that there is none.</source>
        <translation>26(9)(a): Archwiliwch a yw’r ffliw yn effeithiol, neu dywedwch nad oes un.</translation>
    </message>
    <message>
        <source>26(9)(a): The flue is not effective. Leave the appliance off until it is.</source>
        <translation>26(9)(a): Nid yw’r ffliw yn effeithiol. Gadewch y cyfarpar i ffwrdd nes ei bod.</translation>
    </message>
    <message>
        <source>26(9)(b): Examine the supply of combustion air.</source>
        <translation>26(9)(b): Archwiliwch y cyflenwad aer hylosgi.</translation>
    </message>
    <message>
        <source>26(9)(b): The supply of combustion air is not right. Leave the appliance off until it is.</source>
        <translation>26(9)(b): Nid yw’r cyflenwad aer hylosgi yn iawn. Gadewch y cyfarpar i ffwrdd nes ei fod.</translation>
    </message>
    <message>
        <source>26(9)(c): Read the operating pressure or the heat input. Only where neither can reasonably be read does combustion stand in, and then say why.</source>
        <translation>26(9)(c): Darllenwch y pwysedd gweithredu neu’r mewnbwn gwres. Dim ond lle na ellir yn rhesymol ddarllen y naill na’r llall y mae hylosgi yn cymryd eu lle, a dywedwch pam bryd hynny.</translation>
    </message>
    <message>
        <source>26(9)(c): Both operating pressure and heat input are needed here; one is missing.</source>
        <translation>26(9)(c): Mae angen pwysedd gweithredu a mewnbwn gwres yma ill dau; mae un ar goll.</translation>
    </message>
    <message>
        <source>26(9)(c): A reading is outside its limits: see its own finding.</source>
        <translation>26(9)(c): Mae darlleniad y tu allan i’w derfynau: gweler ei ganfyddiad ei hun.</translation>
    </message>
    <message>
        <source>26(9)(c): A reading was taken that can not be judged yet: see its own finding.</source>
        <translation>26(9)(c): Cymerwyd darlleniad na ellir ei farnu eto: gweler ei ganfyddiad ei hun.</translation>
    </message>
    <message>
        <source>26(9)(c): A reading asks for another look: see its own finding.</source>
        <translation>26(9)(c): Mae darlleniad yn gofyn am edrych eto: gweler ei ganfyddiad ei hun.</translation>
    </message>
    <message>
        <source>26(9)(ca): Combustion stands in only where neither operating pressure nor heat input can reasonably be read. Say why they can&apos;t, or read one of them.</source>
        <translation>26(9)(ca): Dim ond lle na ellir yn rhesymol ddarllen y pwysedd gweithredu na’r mewnbwn gwres y mae hylosgi yn cymryd eu lle. Dywedwch pam na ellir, neu darllenwch un ohonynt.</translation>
    </message>
    <message>
        <source>26(9)(ca): Write down why neither operating pressure nor heat input could be read.</source>
        <translation>26(9)(ca): Ysgrifennwch pam na ellid darllen y pwysedd gweithredu na’r mewnbwn gwres.</translation>
    </message>
    <message>
        <source>26(9)(ca): Neither operating pressure nor heat input could be read: check the combustion instead.</source>
        <translation>26(9)(ca): Ni ellid darllen y pwysedd gweithredu na’r mewnbwn gwres: gwiriwch y hylosgi yn lle hynny.</translation>
    </message>
    <message>
        <source>26(9)(ca): Combustion stands in for operating pressure and heat input, with the reason written down.</source>
        <translation>26(9)(ca): Mae hylosgi yn cymryd lle’r pwysedd gweithredu a’r mewnbwn gwres, a’r rheswm wedi’i ysgrifennu.</translation>
    </message>
    <message>
        <source>26(9)(d): Examine its operation, so that it works safely.</source>
        <translation>26(9)(d): Archwiliwch ei weithrediad, fel ei fod yn gweithio’n ddiogel.</translation>
    </message>
    <message>
        <source>26(9)(d): It does not work safely. Leave it off until it does.</source>
        <translation>26(9)(d): Nid yw’n gweithio’n ddiogel. Gadewch ef i ffwrdd nes ei fod.</translation>
    </message>
    <message>
        <source>Tell the responsible person of the defect at once, and the owner if that is somebody else.</source>
        <translation>Dywedwch wrth y person cyfrifol am y diffyg ar unwaith, ac wrth y perchennog os rhywun arall yw hwnnw.</translation>
    </message>
    <message>
        <source>Regulation 26(9) is taken not to apply: the appliance was only disconnected, or only purged without harm to it. This is from memory of 26(10): check it in the regulations.</source>
        <translation>Cymerir nad yw Regulation 26(9) (rheoliad 26(9)) yn berthnasol: dim ond datgysylltu’r cyfarpar a wnaed, neu ei garthu’n unig heb niwed iddo. O gof o 26(10) y daw hyn: gwiriwch ef yn y rheoliadau.</translation>
    </message>
    <message>
        <source>The pressure falls by %1 (give or take %3) from the meter to the appliance, within the %2 allowed at full demand.</source>
        <translation>Mae’r pwysedd yn cwympo %1 (mwy neu lai %3) o’r mesurydd i’r cyfarpar, o fewn y %2 a ganiateir ar alw llawn.</translation>
    </message>
    <message>
        <source>The pressure falls by %1 (give or take %3) from the meter to the appliance, at or too near to the %2 allowed. Read both again, on one gauge, with everything burning.</source>
        <translation>Mae’r pwysedd yn cwympo %1 (mwy neu lai %3) o’r mesurydd i’r cyfarpar, ar y %2 a ganiateir neu’n rhy agos ato. Darllenwch y ddau eto, ar un medrydd, gyda phopeth yn llosgi.</translation>
    </message>
    <message>
        <source>The pressure falls by %1 (give or take %3) from the meter to the appliance, more than the %2 allowed. The pipe is too small or partly shut: look for that first.</source>
        <translation>Mae’r pwysedd yn cwympo %1 (mwy neu lai %3) o’r mesurydd i’r cyfarpar, mwy na’r %2 a ganiateir. Mae’r bibell yn rhy fach neu’n rhannol ar gau: chwiliwch am hynny’n gyntaf.</translation>
    </message>
    <message>
        <source>Natural gas was taken, since no gas has been chosen. Choose the gas to have this judged.</source>
        <translation>Cymerwyd nwy naturiol, gan na ddewiswyd nwy. Dewiswch y nwy er mwyn barnu hyn.</translation>
    </message>
    <message>
        <source>The maker&apos;s figure can&apos;t be used as it was typed, and it decides before any other. A range needs both ends, the lower one first, in one unit. Put it right, or clear it where the maker gives none.</source>
        <translation>Ni ellir defnyddio ffigur y gwneuthurwr fel y’i teipiwyd, ac mae’n penderfynu cyn unrhyw un arall. Mae angen y ddau ben ar ystod, yr isaf yn gyntaf, mewn un uned. Unionwch ef, neu cliriwch ef lle nad yw’r gwneuthurwr yn rhoi un.</translation>
    </message>
    <message>
        <source>Two gauges may differ by more than this. Read both pressures on one gauge, or enter the gauges&apos; accuracy.</source>
        <translation>Gall dau fedrydd wahaniaethu o fwy na hyn. Darllenwch y ddau bwysedd ar un medrydd, neu nodwch gywirdeb y medryddion.</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio %1 (± %3), at most %2 allowed.</source>
        <translation>Cymhareb CO/CO₂ %1 (± %3), caniateir %2 ar y mwyaf.</translation>
    </message>
    <message>
        <source>The CO/CO₂ ratio is %1 (± %3); at most %2 is allowed.</source>
        <translation>Y gymhareb CO/CO₂ yw %1 (± %3); caniateir %2 ar y mwyaf.</translation>
    </message>
    <message>
        <source>CO %1 (± %3), at most %2 allowed.</source>
        <translation>CO %1 (± %3), caniateir %2 ar y mwyaf.</translation>
    </message>
    <message>
        <source>CO is %1 (± %3); at most %2 is allowed.</source>
        <translation>Mae CO yn %1 (± %3); caniateir %2 ar y mwyaf.</translation>
    </message>
    <message>
        <source>CO₂ %1 lies between %2 and %3, as the maker wants it.</source>
        <translation>Mae CO₂ %1 rhwng %2 a %3, fel y mae’r gwneuthurwr yn ei ofyn.</translation>
    </message>
    <message>
        <source>CO₂ %1 lies outside the maker&apos;s %2 to %3.</source>
        <translation>Mae CO₂ %1 y tu allan i %2 i %3 y gwneuthurwr.</translation>
    </message>
    <message>
        <source>CO₂ %1 is at the edge of the maker&apos;s %2 to %3, too near to tell: consult the maker.</source>
        <translation>Mae CO₂ %1 ar ymyl %2 i %3 y gwneuthurwr, rhy agos i ddweud: holwch y gwneuthurwr.</translation>
    </message>
    <message>
        <source>%1 is at the limit of %2, too near to tell with ± %3: that is no pass; consult the maker.</source>
        <translation>Mae %1 ar y terfyn o %2, rhy agos i ddweud gyda ± %3: nid yw hynny’n pasio; holwch y gwneuthurwr.</translation>
    </message>
    <message>
        <source>A hotplate has no limit of its ratio: judge it by its flame and by the CO in the room.</source>
        <translation>Nid oes terfyn cymhareb i hob: barnwch ef yn ôl ei fflam a’r CO yn yr ystafell.</translation>
    </message>
    <message>
        <source>No standard&apos;s figure is known here for this kind of appliance: take the maker&apos;s and enter it with the appliance.</source>
        <translation>Nid oes ffigur safonol yn hysbys yma ar gyfer y math hwn o gyfarpar: cymerwch un y gwneuthurwr a’i nodi gyda’r cyfarpar.</translation>
    </message>
    <message>
        <source>Say what kind of appliance it is: each kind has limits of its own.</source>
        <translation>Dywedwch pa fath o gyfarpar ydyw: mae gan bob math ei derfynau ei hun.</translation>
    </message>
    <message>
        <source>No CO₂ was read, so there was no flue gas at the probe: check the probe and measure again.</source>
        <translation>Ni ddarllenwyd CO₂, felly nid oedd nwy ffliw wrth y stiliwr: gwiriwch y stiliwr a mesurwch eto.</translation>
    </message>
    <message>
        <source>A reading below nought: set the analyser to fresh air outdoors and measure again.</source>
        <translation>Darlleniad islaw sero: gosodwch y dadansoddydd i awyr iach y tu allan a mesurwch eto.</translation>
    </message>
    <message>
        <source>The limit is in a unit that the reading can&apos;t be held against: enter it in ppm.</source>
        <translation>Mae’r terfyn mewn uned na ellir cymharu’r darlleniad â hi: nodwch ef mewn ppm.</translation>
    </message>
    <message>
        <source>The readings at maximum rate are missing: both rates are needed.</source>
        <translation>Mae’r darlleniadau ar y gyfradd uchaf ar goll: mae angen y ddwy gyfradd.</translation>
    </message>
    <message>
        <source>The readings at minimum rate are missing: both rates are needed.</source>
        <translation>Mae’r darlleniadau ar y gyfradd isaf ar goll: mae angen y ddwy gyfradd.</translation>
    </message>
    <message>
        <source>Combustion is within its limits at every rate that was measured.</source>
        <translation>Mae’r hylosgi o fewn ei derfynau ar bob cyfradd a fesurwyd.</translation>
    </message>
    <message>
        <source>First check the joints and seals of the flue and where the probe sits; then measure again.</source>
        <translation>Yn gyntaf gwiriwch uniadau a seliau’r ffliw a lle mae’r stiliwr yn eistedd; yna mesurwch eto.</translation>
    </message>
    <message>
        <source>First check where the probe sits and that the burner is hot and steady; then measure again.</source>
        <translation>Yn gyntaf gwiriwch lle mae’r stiliwr yn eistedd a bod y llosgydd yn boeth ac yn sefydlog; yna mesurwch eto.</translation>
    </message>
    <message>
        <source>If it is still beyond the limit: turn the appliance off, make it safe and call its maker.</source>
        <translation>Os yw’n dal y tu hwnt i’r terfyn: trowch y cyfarpar i ffwrdd, gwnewch ef yn ddiogel a galwch ei wneuthurwr.</translation>
    </message>
    <message>
        <source>The analyser worked CO₂ out from O₂: it is right only if the analyser is set to this fuel.</source>
        <translation>Cyfrifodd y dadansoddydd CO₂ o O₂: mae’n gywir dim ond os yw’r dadansoddydd wedi’i osod i’r tanwydd hwn.</translation>
    </message>
    <message>
        <source>Not said that the analyser was set to fresh air outdoors: do so and measure again.</source>
        <translation>Heb nodi bod y dadansoddydd wedi’i osod i awyr iach y tu allan: gwnewch hynny a mesurwch eto.</translation>
    </message>
    <message>
        <source>O₂ %1 (± %3) at the air inlet; at least %2 is needed.</source>
        <translation>O₂ %1 (± %3) wrth y fewnfa aer; mae angen o leiaf %2.</translation>
    </message>
    <message>
        <source>Only %1 O₂ (± %3) at the air inlet, at least %2 wanted: flue gas may be getting into the air.</source>
        <translation>Dim ond %1 O₂ (± %3) wrth y fewnfa aer, mae angen o leiaf %2: gall nwy ffliw fod yn mynd i’r aer.</translation>
    </message>
    <message>
        <source>CO₂ %1 (± %3) at the air inlet; it must be below %2.</source>
        <translation>CO₂ %1 (± %3) wrth y fewnfa aer; rhaid iddo fod islaw %2.</translation>
    </message>
    <message>
        <source>CO₂ %1 (± %3) at the air inlet, below %2 wanted: flue gas may be getting into the air.</source>
        <translation>CO₂ %1 (± %3) wrth y fewnfa aer, dylai fod islaw %2: gall nwy ffliw fod yn mynd i’r aer.</translation>
    </message>
    <message>
        <source>O₂ and CO₂ belong to this fuel: %1 off its line (± %3), up to %2 is usual.</source>
        <translation>Mae O₂ a CO₂ yn perthyn i’r tanwydd hwn: %1 oddi ar ei linell (± %3), mae hyd at %2 yn arferol.</translation>
    </message>
    <message>
        <source>O₂ and CO₂ do not belong together with this fuel: %1 off its line (± %3), up to %2 is usual.</source>
        <translation>Nid yw O₂ a CO₂ yn perthyn i’w gilydd gyda’r tanwydd hwn: %1 oddi ar ei linell (± %3), mae hyd at %2 yn arferol.</translation>
    </message>
    <message>
        <source>Air drawn in through a loose hose or probe thins both alike: this check can&apos;t see it.</source>
        <translation>Mae aer a dynnir i mewn drwy bibell neu stiliwr rhydd yn teneuo’r ddau fel ei gilydd: ni all y gwiriad hwn ei weld.</translation>
    </message>
    <message>
        <source>The analyser worked CO₂ out from O₂, so this shows only which fuel it was set to.</source>
        <translation>Cyfrifodd y dadansoddydd CO₂ o O₂, felly dim ond i ba danwydd y’i gosodwyd y mae hyn yn ei ddangos.</translation>
    </message>
    <message>
        <source>O₂ %1 is more than fresh air holds: set the analyser to fresh air outdoors and measure again.</source>
        <translation>Mae O₂ %1 yn fwy nag sydd mewn awyr iach: gosodwch y dadansoddydd i awyr iach y tu allan a mesurwch eto.</translation>
    </message>
    <message>
        <source>CO₂ %1 is more than this fuel can give (%2): check the fuel set on the analyser.</source>
        <translation>Mae CO₂ %1 yn fwy nag y gall y tanwydd hwn ei roi (%2): gwiriwch y tanwydd a osodwyd ar y dadansoddydd.</translation>
    </message>
    <message>
        <source>They would fit %1: check the fuel set on the analyser.</source>
        <translation>Byddent yn ffitio %1: gwiriwch y tanwydd a osodwyd ar y dadansoddydd.</translation>
    </message>
    <message>
        <source>O₂ %2 would fit: check that %1 was typed right.</source>
        <translation>Byddai O₂ %2 yn ffitio: gwiriwch fod %1 wedi’i deipio’n gywir.</translation>
    </message>
    <message>
        <source>CO₂ %2 would fit: check that %1 was typed right.</source>
        <translation>Byddai CO₂ %2 yn ffitio: gwiriwch fod %1 wedi’i deipio’n gywir.</translation>
    </message>
    <message>
        <source>O₂ and CO₂ would fit if they were exchanged: check which is which.</source>
        <translation>Byddai O₂ a CO₂ yn ffitio pe baent wedi’u cyfnewid: gwiriwch pa un yw pa un.</translation>
    </message>
    <message>
        <source>No usual slip explains it: read O₂ and CO₂ again at the same moment, and check the hose, the filter and the fuel set.</source>
        <translation>Nid oes llithriad arferol yn ei egluro: darllenwch O₂ a CO₂ eto ar yr un eiliad, a gwiriwch y bibell, yr hidlydd a’r tanwydd a osodwyd.</translation>
    </message>
    <message>
        <source>What O₂ and CO₂ belong together depends on the mixture of this gas, which is not known here: they are not held against each other.</source>
        <translation>Mae pa O₂ a CO₂ sy’n perthyn i’w gilydd yn dibynnu ar gymysgedd y nwy hwn, nad yw’n hysbys yma: ni chymherir y naill â’r llall.</translation>
    </message>
    <message>
        <source>The ratio on the printout, %1, is that of its CO and CO₂ (%2).</source>
        <translation>Y gymhareb ar yr allbrint, %1, yw un ei CO a’i CO₂ (%2).</translation>
    </message>
    <message>
        <source>The ratio on the printout is %1, but its CO and CO₂ give %2: check what was typed.</source>
        <translation>Y gymhareb ar yr allbrint yw %1, ond mae ei CO a’i CO₂ yn rhoi %2: gwiriwch yr hyn a deipiwyd.</translation>
    </message>
    <message>
        <source>The flue at %1 is no hotter than the air at %2: check whether the net temperature was typed for the flue&apos;s.</source>
        <translation>Nid yw’r ffliw ar %1 yn boethach na’r aer ar %2: gwiriwch a deipiwyd y tymheredd net yn lle un y ffliw.</translation>
    </message>
    <message>
        <source>Excess air %1 (exact for the fuel); %2 by the simple formula.</source>
        <translation>Aer gormodol %1 (union ar gyfer y tanwydd); %2 yn ôl y fformiwla syml.</translation>
    </message>
    <message>
        <source>CO %1 free of air, %2 at 3 % O₂.</source>
        <translation>CO %1 heb aer, %2 ar 3 % O₂.</translation>
    </message>
    <message>
        <source>CO %1 of heat input by the net calorific value, %2 by the gross.</source>
        <translation>CO %1 o fewnbwn gwres yn ôl y gwerth caloriffig net, %2 yn ôl y gros.</translation>
    </message>
    <message>
        <source>Net efficiency %1 by the Siegert formula: flue loss %2, dry flue gas, nothing condensed.</source>
        <translation>Effeithlonrwydd net %1 yn ôl fformiwla Siegert: colled ffliw %2, nwy ffliw sych, dim wedi cyddwyso.</translation>
    </message>
    <message>
        <source>Gross efficiency %1 by the losses of BS 845: dry gas %2, water vapour %3, unburned gas %4; casing losses not counted.</source>
        <translation>Effeithlonrwydd gros %1 yn ôl colledion BS 845: nwy sych %2, anwedd dŵr %3, nwy heb ei losgi %4; ni chyfrifir colledion y casyn.</translation>
    </message>
    <message>
        <source>At %1 the flue gas is below its dew point of %2: these formulas do not count what condensed.</source>
        <translation>Ar %1 mae’r nwy ffliw islaw ei wlithbwynt o %2: nid yw’r fformiwlâu hyn yn cyfrif yr hyn a gyddwysodd.</translation>
    </message>
    <message>
        <source>All the water&apos;s heat would be %1 of the net input; a gas analyser can&apos;t measure how much of it was won.</source>
        <translation>Byddai holl wres y dŵr yn %1 o’r mewnbwn net; ni all dadansoddydd nwy fesur faint ohono a enillwyd.</translation>
    </message>
    <message>
        <source>IGEM/UP/1B applies: the installation lies within its scope.</source>
        <translation>Mae IGEM/UP/1B yn berthnasol: mae’r gosodiad o fewn ei chwmpas.</translation>
    </message>
    <message>
        <source>The pressure of %1 is beyond the %2 of IGE/UP/1 too: no standard here covers it. Ask the designer which one does.</source>
        <translation>Mae’r pwysedd o %1 y tu hwnt i %2 IGE/UP/1 hefyd: nid oes safon yma yn ei gwmpasu. Gofynnwch i’r dylunydd pa un sydd.</translation>
    </message>
    <message>
        <source>Movements from %1 can be read on this gauge.</source>
        <translation>Gellir darllen symudiadau o %1 ar y medrydd hwn.</translation>
    </message>
    <message>
        <source>The table of readable movements has no gauge of this kind, range and decimals. Use a gauge that it has, or correct what was said of this one.</source>
        <translation>Nid oes medrydd o’r math, ystod a lleoedd degol hyn yn nhabl y symudiadau darllenadwy. Defnyddiwch fedrydd sydd ynddo, neu cywirwch yr hyn a ddywedwyd am hwn.</translation>
    </message>
    <message>
        <source>The test needs %1; this gauge may be used for up to %2.</source>
        <translation>Mae angen %1 ar y prawf; gellir defnyddio’r medrydd hwn am hyd at %2.</translation>
    </message>
    <message>
        <source>The test needs %1, longer than the %2 that this gauge allows. Split the installation or use a finer gauge.</source>
        <translation>Mae angen %1 ar y prawf, hwy na’r %2 y mae’r medrydd hwn yn ei ganiatáu. Rhannwch y gosodiad neu defnyddiwch fedrydd manylach.</translation>
    </message>
    <message>
        <source>The test needs %1. How long a test on this gauge may be is not in the rule book: enter it from your own copy of the standard.</source>
        <translation>Mae angen %1 ar y prawf. Nid yw pa mor hir y gall prawf ar y medrydd hwn fod yn y llyfr rheolau: nodwch ef o’ch copi eich hun o’r safon.</translation>
    </message>
    <message>
        <source>Say what kind of place the pipework runs through.</source>
        <translation>Dywedwch drwy ba fath o le y mae’r pibellau’n rhedeg.</translation>
    </message>
    <message>
        <source>Enter the volume of the room: what may leak goes by it.</source>
        <translation>Nodwch gyfaint yr ystafell: mae’r hyn a gaiff ollwng yn dibynnu arno.</translation>
    </message>
    <message>
        <source>Say whether the room is adequately ventilated.</source>
        <translation>Dywedwch a yw’r ystafell wedi’i hawyru’n ddigonol.</translation>
    </message>
    <message>
        <source>A room that is not adequately ventilated counts as type A, the strictest.</source>
        <translation>Mae ystafell nad yw wedi’i hawyru’n ddigonol yn cyfrif fel math A, y llymaf.</translation>
    </message>
    <message>
        <source>With %1 of room the figure for a large room is the stricter one and is used.</source>
        <translation>Gyda %1 o ystafell y ffigur ar gyfer ystafell fawr yw’r llymaf ac fe’i defnyddir.</translation>
    </message>
    <message>
        <source>Which rooms count as type C is not in the rule book: enter the least volume from your own copy of the standard. This room has %1.</source>
        <translation>Nid yw pa ystafelloedd sy’n cyfrif fel math C yn y llyfr rheolau: nodwch y cyfaint lleiaf o’ch copi eich hun o’r safon. Mae gan yr ystafell hon %1.</translation>
    </message>
    <message>
        <source>The room of %1 is smaller than the %2 from which it would count as type C.</source>
        <translation>Mae’r ystafell o %1 yn llai na’r %2 y byddai’n cyfrif fel math C ohono.</translation>
    </message>
    <message>
        <source>Say whether the test was made with the fuel gas, air or nitrogen.</source>
        <translation>Dywedwch ai â’r nwy tanwydd, aer neu nitrogen y gwnaed y prawf.</translation>
    </message>
    <message>
        <source>Enter the operating pressure: the pressure of the test goes by it.</source>
        <translation>Nodwch y pwysedd gweithredu: mae pwysedd y prawf yn dibynnu arno.</translation>
    </message>
    <message>
        <source>Up to %1 may leak, with no smell of gas.</source>
        <translation>Caiff hyd at %1 ollwng, heb arogl nwy.</translation>
    </message>
    <message>
        <source>The fall is worth a leak of %1; %2 is permitted.</source>
        <translation>Mae’r cwymp yn gyfwerth â gollyngiad o %1; caniateir %2.</translation>
    </message>
    <message>
        <source>The fall is worth a leak of %1, more than the %2 permitted.</source>
        <translation>Mae’r cwymp yn gyfwerth â gollyngiad o %1, mwy na’r %2 a ganiateir.</translation>
    </message>
    <message>
        <source>A leak of %1, give or take %3, is too near the permitted %2 to tell. Test for longer, or use a finer gauge.</source>
        <translation>Mae gollyngiad o %1, mwy neu lai %3, yn rhy agos at y %2 a ganiateir i ddweud. Profwch am hwy, neu defnyddiwch fedrydd manylach.</translation>
    </message>
    <message>
        <source>The smallest leak that this test could show is %1.</source>
        <translation>Y gollyngiad lleiaf y gallai’r prawf hwn ei ddangos yw %1.</translation>
    </message>
    <message>
        <source>Let by from %1; about half of the operating pressure is %2.</source>
        <translation>Gollwng heibio o %1; tua hanner y pwysedd gweithredu yw %2.</translation>
    </message>
    <message>
        <source>Let-by from %1 shows nothing: it must start well below the operating pressure of %2. Repeat it.</source>
        <translation>Nid yw gollwng heibio o %1 yn dangos dim: rhaid iddo ddechrau ymhell islaw’r pwysedd gweithredu o %2. Ailadroddwch ef.</translation>
    </message>
    <message>
        <source>Held from %1; %2 is needed.</source>
        <translation>Daliwyd o %1; mae angen %2.</translation>
    </message>
    <message>
        <source>Held from %1; %2 is needed. Repeat the strength test.</source>
        <translation>Daliwyd o %1; mae angen %2. Ailadroddwch y prawf cryfder.</translation>
    </message>
    <message>
        <source>From the maximum incidental pressure %1 is needed, from the maximum operating pressure %2: the higher decides.</source>
        <translation>O’r pwysedd achlysurol mwyaf mae angen %1, o’r pwysedd gweithredu mwyaf %2: yr uchaf sy’n penderfynu.</translation>
    </message>
    <message>
        <source>The maximum incidental pressure of %1 can&apos;t be below the maximum operating pressure of %2. Correct them.</source>
        <translation>Ni all y pwysedd achlysurol mwyaf o %1 fod islaw’r pwysedd gweithredu mwyaf o %2. Cywirwch nhw.</translation>
    </message>
    <message>
        <source>Settled for %1 and held for %2, long enough.</source>
        <translation>Sefydlogwyd am %1 a daliwyd am %2, digon hir.</translation>
    </message>
    <message>
        <source>No readable fall (change %1, readable from %2).</source>
        <translation>Dim cwymp darllenadwy (newid %1, darllenadwy o %2).</translation>
    </message>
    <message>
        <source>A fall of %1 is within the %2 allowed.</source>
        <translation>Mae cwymp o %1 o fewn y %2 a ganiateir.</translation>
    </message>
    <message>
        <source>The pressure fell by %1 (%2 allowed). Find the leak or the weakness, put it right and repeat.</source>
        <translation>Cwympodd y pwysedd %1 (caniateir %2). Dewch o hyd i’r gollyngiad neu’r gwendid, unionwch ef ac ailadroddwch.</translation>
    </message>
    <message>
        <source>A strength test is made with air or nitrogen, never with fuel gas. Make safe and repeat it.</source>
        <translation>Gwneir prawf cryfder ag aer neu nitrogen, byth â nwy tanwydd. Gwnewch yn ddiogel ac ailadroddwch ef.</translation>
    </message>
    <message>
        <source>Meters, regulators and valves not rated for the pressure: taken off or isolated.</source>
        <translation>Mesuryddion, rheolyddion a falfiau heb eu graddio ar gyfer y pwysedd: wedi’u tynnu neu eu hynysu.</translation>
    </message>
    <message>
        <source>Take off or isolate meters, regulators and valves that are not rated for the test pressure.</source>
        <translation>Tynnwch neu ynyswch fesuryddion, rheolyddion a falfiau nad ydynt wedi’u graddio ar gyfer pwysedd y prawf.</translation>
    </message>
    <message>
        <source>Due by %1.</source>
        <translation>Yn ddyledus erbyn %1.</translation>
    </message>
    <message>
        <source>What was read leaves open whether it is due by %1 or by %2. Keep the first date, or ask.</source>
        <translation>Mae’r hyn a ddarllenwyd yn gadael yn agored a yw’n ddyledus erbyn %1 neu erbyn %2. Cadwch y dyddiad cyntaf, neu holwch.</translation>
    </message>
    <message>
        <source>It was due by %1. Have it checked now.</source>
        <translation>Roedd yn ddyledus erbyn %1. Trefnwch i’w archwilio nawr.</translation>
    </message>
    <message>
        <source>Say in which country: the law differs.</source>
        <translation>Dywedwch ym mha wlad: mae’r gyfraith yn wahanol.</translation>
    </message>
    <message>
        <source>Enter when the appliance was installed, when the lease begins, or the date from which the twelve months run.</source>
        <translation>Nodwch pryd gosodwyd y cyfarpar, pryd mae’r les yn dechrau, neu’r dyddiad y mae’r deuddeg mis yn rhedeg ohono.</translation>
    </message>
    <message>
        <source>The check on %1 lies before %2. Correct the dates.</source>
        <translation>Mae’r archwiliad ar %1 cyn %2. Cywirwch y dyddiadau.</translation>
    </message>
    <message>
        <source>The check on %1 lies in the two months that end with %2: it counts as made on that date (regulation 36A(1)).</source>
        <translation>Mae’r archwiliad ar %1 yn y ddau fis sy’n dod i ben ar %2: mae’n cyfrif fel pe bai wedi’i wneud ar y dyddiad hwnnw (regulation 36A(1), rheoliad 36A(1)).</translation>
    </message>
    <message>
        <source>The check on %1 came before the two months that end with %2: twelve months run from it anew.</source>
        <translation>Daeth yr archwiliad ar %1 cyn y ddau fis sy’n dod i ben ar %2: mae deuddeg mis yn rhedeg ohono o’r newydd.</translation>
    </message>
    <message>
        <source>Whether the check on %1 lies in the two months that end with %2 goes by how they are counted. Ask, or keep the earlier date.</source>
        <translation>Mae a yw’r archwiliad ar %1 yn y ddau fis sy’n dod i ben ar %2 yn dibynnu ar sut y’u cyfrifir. Holwch, neu cadwch y dyddiad cynharaf.</translation>
    </message>
    <message>
        <source>The check on %1 was in time for %2.</source>
        <translation>Roedd yr archwiliad ar %1 mewn pryd ar gyfer %2.</translation>
    </message>
    <message>
        <source>The check on %1 came after %2, when it was due.</source>
        <translation>Daeth yr archwiliad ar %1 ar ôl %2, pan oedd yn ddyledus.</translation>
    </message>
    <message>
        <source>The check on %1 used the one time that a first check may be put off, to %2.</source>
        <translation>Defnyddiodd yr archwiliad ar %1 yr unig dro y gellir gohirio archwiliad cyntaf, i %2.</translation>
    </message>
    <message>
        <source>Twelve months from the installation on %1 (in Great Britain regulation 36(3)(a)).</source>
        <translation>Deuddeg mis o’r gosod ar %1 (ym Mhrydain Fawr regulation 36(3)(a), rheoliad 36(3)(a)).</translation>
    </message>
    <message>
        <source>A check is to be made in the twelve months before the lease begins on %1 (in Great Britain regulation 36(3)(b)).</source>
        <translation>Mae archwiliad i’w wneud yn y deuddeg mis cyn i’r les ddechrau ar %1 (ym Mhrydain Fawr regulation 36(3)(b), rheoliad 36(3)(b)).</translation>
    </message>
    <message>
        <source>Twelve months from %1.</source>
        <translation>Deuddeg mis o %1.</translation>
    </message>
    <message>
        <source>Twelve months from %1, the date for which the check counts (regulation 36A(1)).</source>
        <translation>Deuddeg mis o %1, y dyddiad y mae’r archwiliad yn cyfrif ar ei gyfer (regulation 36A(1), rheoliad 36A(1)).</translation>
    </message>
    <message>
        <source>Twelve months from the check on %1, or from %2 if it counts for that date (regulation 36A(1)).</source>
        <translation>Deuddeg mis o’r archwiliad ar %1, neu o %2 os yw’n cyfrif ar gyfer y dyddiad hwnnw (regulation 36A(1), rheoliad 36A(1)).</translation>
    </message>
    <message>
        <source>Twelve months from the check on %1; whether they run from %2, when the lease begins, was not read.</source>
        <translation>Deuddeg mis o’r archwiliad ar %1; ni ddarllenwyd a ydynt yn rhedeg o %2, pan fydd y les yn dechrau.</translation>
    </message>
    <message>
        <source>The first check was due by %1; once, it may be put off to %2 to come with the others.</source>
        <translation>Roedd yr archwiliad cyntaf yn ddyledus erbyn %1; unwaith, gellir ei ohirio i %2 i ddod gyda’r lleill.</translation>
    </message>
    <message>
        <source>How the next date follows after a first check that was put off was not read (regulation 36A(2) and (3)).</source>
        <translation>Ni ddarllenwyd sut y mae’r dyddiad nesaf yn dilyn archwiliad cyntaf a ohiriwyd (regulation 36A(2) and (3), rheoliad 36A(2) a (3)).</translation>
    </message>
    <message>
        <source>A check from %1 to %2 keeps the date; an earlier one starts twelve months anew (regulation 36A(1)).</source>
        <translation>Mae archwiliad o %1 i %2 yn cadw’r dyddiad; mae un cynharach yn dechrau deuddeg mis o’r newydd (regulation 36A(1), rheoliad 36A(1)).</translation>
    </message>
    <message>
        <source>Northern Ireland&apos;s regulations (SR 2004/63) were not read: this is from memory. Look them up.</source>
        <translation>Ni ddarllenwyd rheoliadau Gogledd Iwerddon (SR 2004/63): o’r cof y daw hyn. Chwiliwch amdanynt.</translation>
    </message>
    <message>
        <source>An existing tenant&apos;s copy of the record is due by %1, 28 days after the check (regulation 36(6)).</source>
        <translation>Mae copi tenant presennol o’r cofnod yn ddyledus erbyn %1, 28 diwrnod ar ôl yr archwiliad (regulation 36(6), rheoliad 36(6)).</translation>
    </message>
    <message>
        <source>A new tenant&apos;s copy of the record is due before they move in on %1 (regulation 36(6)).</source>
        <translation>Mae copi tenant newydd o’r cofnod yn ddyledus cyn iddo symud i mewn ar %1 (regulation 36(6), rheoliad 36(6)).</translation>
    </message>
    <message>
        <source>A new tenant&apos;s copy of the record is due before they move in (regulation 36(6)).</source>
        <translation>Mae copi tenant newydd o’r cofnod yn ddyledus cyn iddo symud i mewn (regulation 36(6), rheoliad 36(6)).</translation>
    </message>
    <message>
        <source>This record may be given to a new tenant up to %1, twelve months after the check.</source>
        <translation>Gellir rhoi’r cofnod hwn i denant newydd hyd at %1, deuddeg mis ar ôl yr archwiliad.</translation>
    </message>
    <message>
        <source>Keep the record to %1.</source>
        <translation>Cadwch y cofnod hyd %1.</translation>
    </message>
    <message>
        <source>Keep the record until two further checks have been made, and to %1 at least (regulation 36(3)(c)).</source>
        <translation>Cadwch y cofnod nes bod dau archwiliad arall wedi’u gwneud, a hyd %1 o leiaf (regulation 36(3)(c), rheoliad 36(3)(c)).</translation>
    </message>
    <message>
        <source>The pressure drop to the end of section %4 is %1 (give or take %3), within the %2 allowed.</source>
        <translation>Cwymp y pwysedd i ddiwedd adran %4 yw %1 (mwy neu lai %3), o fewn y %2 a ganiateir.</translation>
    </message>
    <message>
        <source>The pressure drop to the end of section %4 is %1 (give or take %3), at or too near to the %2 allowed. Measure lengths and flows again, or take the larger pipe.</source>
        <translation>Cwymp y pwysedd i ddiwedd adran %4 yw %1 (mwy neu lai %3), ar y %2 a ganiateir neu’n rhy agos ato. Mesurwch hydoedd a llifoedd eto, neu cymerwch y bibell fwy.</translation>
    </message>
    <message>
        <source>The pressure drop to the end of section %4 is %1 (give or take %3), more than the %2 allowed. Enlarge the pipe, or feed the appliance another way.</source>
        <translation>Cwymp y pwysedd i ddiwedd adran %4 yw %1 (mwy neu lai %3), mwy na’r %2 a ganiateir. Ehangwch y bibell, neu bwydwch y cyfarpar mewn ffordd arall.</translation>
    </message>
    <message>
        <source>No pressure drop can be worked out: the flow at the end of section %1, or of a pipe that it feeds, is missing. Enter the appliance&apos;s heat input; a capped end draws 0.</source>
        <translation>Ni ellir cyfrifo cwymp pwysedd: mae’r llif ar ddiwedd adran %1, neu bibell y mae’n ei bwydo, ar goll. Nodwch fewnbwn gwres y cyfarpar; mae pen wedi’i gapio yn tynnu 0.</translation>
    </message>
    <message>
        <source>No pressure drop can be worked out: the tube of section %1 is not said or has no known bore.</source>
        <translation>Ni ellir cyfrifo cwymp pwysedd: nid yw tiwb adran %1 wedi’i nodi neu nid oes ganddo dyllfedd hysbys.</translation>
    </message>
    <message>
        <source>No pressure drop can be worked out: the length of section %1 is missing or can&apos;t be used.</source>
        <translation>Ni ellir cyfrifo cwymp pwysedd: mae hyd adran %1 ar goll neu ni ellir ei ddefnyddio.</translation>
    </message>
    <message>
        <source>No pressure drop can be worked out: the rule book has no equivalent length for a fitting of section %1. Type what its fittings are worth in metres of pipe.</source>
        <translation>Ni ellir cyfrifo cwymp pwysedd: nid oes gan y llyfr rheolau hyd cyfwerth ar gyfer ffitiad o adran %1. Teipiwch werth ei ffitiadau mewn metrau o bibell.</translation>
    </message>
    <message>
        <source>No pressure drop can be worked out: flow and size of section %1 lie outside what the formula is good for. Check both.</source>
        <translation>Ni ellir cyfrifo cwymp pwysedd: mae llif a maint adran %1 y tu allan i’r hyn y mae’r fformiwla’n dda ar ei gyfer. Gwiriwch y ddau.</translation>
    </message>
    <message>
        <source>No pressure drop can be worked out: the density and viscosity of this gas are not known. Enter them.</source>
        <translation>Ni ellir cyfrifo cwymp pwysedd: nid yw dwysedd a gludedd y nwy hwn yn hysbys. Nodwch nhw.</translation>
    </message>
    <message>
        <source>Fittings are counted with the equivalent lengths of %1.</source>
        <translation>Cyfrifir ffitiadau â hydoedd cyfwerth %1.</translation>
    </message>
    <message>
        <source>Fittings are counted with equivalent lengths that were typed in.</source>
        <translation>Cyfrifir ffitiadau â hydoedd cyfwerth a deipiwyd.</translation>
    </message>
    <message>
        <source>The rule book has no pipe efficiency: the pipe is taken to pass only %1 of what the formula for smooth pipe gives.</source>
        <translation>Nid oes gan y llyfr rheolau effeithlonrwydd pibell: cymerir bod y bibell yn pasio dim ond %1 o’r hyn y mae’r fformiwla ar gyfer pibell lefn yn ei roi.</translation>
    </message>
    <message>
        <source>Most is lost in section %1: %2.</source>
        <translation>Collir y rhan fwyaf yn adran %1: %2.</translation>
    </message>
    <message>
        <source>Without the fittings of section %3, the pressure drop to the end of section %4 is at least %1; %2 is allowed. Say what fittings it has, or none.</source>
        <translation>Heb ffitiadau adran %3, mae cwymp y pwysedd i ddiwedd adran %4 o leiaf yn %1; caniateir %2. Dywedwch pa ffitiadau sydd ganddi, neu dim.</translation>
    </message>
    <message>
        <source>No pressure drop can be worked out: which pipe goes on from which is not clear. Put right the column that says so.</source>
        <translation>Ni ellir cyfrifo cwymp pwysedd: nid yw’n glir pa bibell sy’n parhau o ba un. Unionwch y golofn sy’n dweud hynny.</translation>
    </message>
    <message>
        <source>The fittings of section %1 are not said or can&apos;t be read: the drop is at least this.</source>
        <translation>Nid yw ffitiadau adran %1 wedi’u nodi neu ni ellir eu darllen: mae’r cwymp o leiaf yn hyn.</translation>
    </message>
    <message>
        <source>Change section %1 from %2 to %3.</source>
        <translation>Newidiwch adran %1 o %2 i %3.</translation>
    </message>
    <message>
        <source>A purge flow of %1 reaches the least of %2.</source>
        <translation>Mae llif carthu o %1 yn cyrraedd y lleiafswm o %2.</translation>
    </message>
    <message>
        <source>A purge flow of %1 is at, or too near to tell from, the least of %2. Open the vent or the burner further and read again.</source>
        <translation>Mae llif carthu o %1 ar y lleiafswm o %2, neu’n rhy agos ato i ddweud. Agorwch yr awyrell neu’r llosgydd ymhellach a darllenwch eto.</translation>
    </message>
    <message>
        <source>A purge flow of %1 is below the least of %2: gas and air may mix in the pipe instead of one pushing the other out. Purge again, faster.</source>
        <translation>Mae llif carthu o %1 islaw’r lleiafswm o %2: gall nwy ac aer gymysgu yn y bibell yn lle bod un yn gwthio’r llall allan. Carthwch eto, yn gyflymach.</translation>
    </message>
    <message>
        <source>At %2 the purge takes at least %1.</source>
        <translation>Ar %2 mae’r carthu’n cymryd o leiaf %1.</translation>
    </message>
    <message>
        <source>Gas at the vent is %1; the purge ends at %2.</source>
        <translation>Mae’r nwy wrth yr awyrell yn %1; daw’r carthu i ben ar %2.</translation>
    </message>
    <message>
        <source>Gas at the vent is %1, at or too near to the %2 that ends the purge. Purge on and read again.</source>
        <translation>Mae’r nwy wrth yr awyrell yn %1, ar y %2 sy’n dod â’r carthu i ben neu’n rhy agos ato. Carthwch ymlaen a darllenwch eto.</translation>
    </message>
    <message>
        <source>Gas at the vent is only %1; purge on until it reaches %2.</source>
        <translation>Dim ond %1 yw’r nwy wrth yr awyrell; carthwch ymlaen nes iddo gyrraedd %2.</translation>
    </message>
    <message>
        <source>The meter&apos;s cyclic volume is not known. Read it off the meter&apos;s plate.</source>
        <translation>Nid yw cyfaint cylchol y mesurydd yn hysbys. Darllenwch ef oddi ar blât y mesurydd.</translation>
    </message>
    <message>
        <source>The meter&apos;s cyclic volume is taken as %1; the figure on its plate stands before this.</source>
        <translation>Cymerir cyfaint cylchol y mesurydd fel %1; mae’r ffigur ar ei blât yn dod o flaen hwn.</translation>
    </message>
    <message>
        <source>The least purge flow is not known: the largest pipe is not said, or lies outside the table.</source>
        <translation>Nid yw’r llif carthu lleiaf yn hysbys: nid yw’r bibell fwyaf wedi’i nodi, neu mae y tu allan i’r tabl.</translation>
    </message>
    <message>
        <source>The Wobbe index, %1, lies within what a network may deliver: %2 to %3.</source>
        <translation>Mae indecs Wobbe, %1, o fewn yr hyn y caiff rhwydwaith ei ddanfon: %2 i %3.</translation>
    </message>
    <message>
        <source>The Wobbe index, %1, is lower than a network may deliver (%2). Check the figure and its unit; if it stands, tell the gas transporter.</source>
        <translation>Mae indecs Wobbe, %1, yn is nag y caiff rhwydwaith ei ddanfon (%2). Gwiriwch y ffigur a’i uned; os yw’n gywir, dywedwch wrth y cludwr nwy.</translation>
    </message>
    <message>
        <source>The Wobbe index, %1, is higher than a network may deliver (%2). Check the figure and its unit; if it stands, tell the gas transporter.</source>
        <translation>Mae indecs Wobbe, %1, yn uwch nag y caiff rhwydwaith ei ddanfon (%2). Gwiriwch y ffigur a’i uned; os yw’n gywir, dywedwch wrth y cludwr nwy.</translation>
    </message>
    <message>
        <source>The relative density, %1, is no more than a network may deliver: %2.</source>
        <translation>Nid yw’r dwysedd cymharol, %1, yn fwy nag y caiff rhwydwaith ei ddanfon: %2.</translation>
    </message>
    <message>
        <source>The relative density, %1, is higher than a network may deliver (%2). Check the figure; if it stands, tell the gas transporter.</source>
        <translation>Mae’r dwysedd cymharol, %1, yn uwch nag y caiff rhwydwaith ei ddanfon (%2). Gwiriwch y ffigur; os yw’n gywir, dywedwch wrth y cludwr nwy.</translation>
    </message>
    <message>
        <source>The limits of network gas are for natural gas; this gas is %1.</source>
        <translation>Mae terfynau nwy’r rhwydwaith ar gyfer nwy naturiol; %1 yw’r nwy hwn.</translation>
    </message>
    <message>
        <source>The calorific value, %1, is a usual one: networks are seen at %2 to %3.</source>
        <translation>Mae’r gwerth caloriffig, %1, yn un arferol: gwelir rhwydweithiau ar %2 i %3.</translation>
    </message>
    <message>
        <source>The calorific value, %1, is unusual: networks are seen at %2 to %3. Check figure and unit against the bill.</source>
        <translation>Mae’r gwerth caloriffig, %1, yn anarferol: gwelir rhwydweithiau ar %2 i %3. Gwiriwch y ffigur a’r uned yn erbyn y bil.</translation>
    </message>
    <message>
        <source>%1 is too near the limit of %2 to tell. Get the figure with more decimals.</source>
        <translation>Mae %1 yn rhy agos at y terfyn o %2 i ddweud. Mynnwch y ffigur gyda mwy o leoedd degol.</translation>
    </message>
    <message>
        <source>Let-by pressure</source>
        <translation>Pwysedd gollwng heibio</translation>
    </message>
    <message>
        <source>Let-by time</source>
        <translation>Amser gollwng heibio</translation>
    </message>
    <message>
        <source>Test pressure where the full one can&apos;t be reached</source>
        <translation>Pwysedd prawf lle na ellir cyrraedd yr un llawn</translation>
    </message>
    <message>
        <source>Settling time</source>
        <translation>Amser sefydlogi</translation>
    </message>
    <message>
        <source>Tightness test time</source>
        <translation>Amser prawf tyndra</translation>
    </message>
    <message>
        <source>No perceptible movement, water gauge</source>
        <translation>Dim symudiad canfyddadwy, medrydd dŵr</translation>
    </message>
    <message>
        <source>No perceptible movement, electronic gauge</source>
        <translation>Dim symudiad canfyddadwy, medrydd electronig</translation>
    </message>
    <message>
        <source>Steady enough to start timing</source>
        <translation>Digon sefydlog i ddechrau amseru</translation>
    </message>
    <message>
        <source>Drop allowed, no meter in the part, pipe to 28 mm</source>
        <translation>Cwymp a ganiateir, dim mesurydd yn y rhan, pibell hyd at 28 mm</translation>
    </message>
    <message>
        <source>Drop allowed, ultrasonic meter to 6 m³/h, pipe to 28 mm</source>
        <translation>Cwymp a ganiateir, mesurydd uwchsonig hyd at 6 m³/h, pibell hyd at 28 mm</translation>
    </message>
    <message>
        <source>Drop allowed, diaphragm meter to 6 m³/h, pipe to 28 mm</source>
        <translation>Cwymp a ganiateir, mesurydd diaffram hyd at 6 m³/h, pibell hyd at 28 mm</translation>
    </message>
    <message>
        <source>Drop allowed, diaphragm meter above 6 to 16 m³/h, pipe to 28 mm</source>
        <translation>Cwymp a ganiateir, mesurydd diaffram dros 6 hyd at 16 m³/h, pibell hyd at 28 mm</translation>
    </message>
    <message>
        <source>Drop allowed, no meter in the part, pipe above 28 to 35 mm</source>
        <translation>Cwymp a ganiateir, dim mesurydd yn y rhan, pibell dros 28 hyd at 35 mm</translation>
    </message>
    <message>
        <source>Drop allowed, ultrasonic meter to 6 m³/h, pipe above 28 to 35 mm</source>
        <translation>Cwymp a ganiateir, mesurydd uwchsonig hyd at 6 m³/h, pibell dros 28 hyd at 35 mm</translation>
    </message>
    <message>
        <source>Drop allowed, diaphragm meter to 6 m³/h, pipe above 28 to 35 mm</source>
        <translation>Cwymp a ganiateir, mesurydd diaffram hyd at 6 m³/h, pibell dros 28 hyd at 35 mm</translation>
    </message>
    <message>
        <source>Drop allowed, diaphragm meter above 6 to 16 m³/h, pipe above 28 to 35 mm</source>
        <translation>Cwymp a ganiateir, mesurydd diaffram dros 6 hyd at 16 m³/h, pibell dros 28 hyd at 35 mm</translation>
    </message>
    <message>
        <source>Drop allowed by installation volume</source>
        <translation>Cwymp a ganiateir yn ôl cyfaint y gosodiad</translation>
    </message>
    <message>
        <source>Fall for which the volume need not be worked out</source>
        <translation>Cwymp nad oes rhaid cyfrifo’r cyfaint ar ei gyfer</translation>
    </message>
    <message>
        <source>Scope, installation volume</source>
        <translation>Cwmpas, cyfaint y gosodiad</translation>
    </message>
    <message>
        <source>Scope, pipe size</source>
        <translation>Cwmpas, maint pibell</translation>
    </message>
    <message>
        <source>Scope, meter&apos;s badged capacity</source>
        <translation>Cwmpas, capasiti’r mesurydd yn ôl ei blât</translation>
    </message>
    <message>
        <source>Scope, operating pressure</source>
        <translation>Cwmpas, pwysedd gweithredu</translation>
    </message>
    <message>
        <source>Scope, supply pressure at the emergency control valve</source>
        <translation>Cwmpas, pwysedd cyflenwi wrth y falf rheoli argyfwng</translation>
    </message>
    <message>
        <source>Purge volume, meter to 6 m³/h and pipe to 28 mm</source>
        <translation>Cyfaint carthu, mesurydd hyd at 6 m³/h a phibell hyd at 28 mm</translation>
    </message>
    <message>
        <source>Purge volume, times the installation volume</source>
        <translation>Cyfaint carthu, lluosrif o gyfaint y gosodiad</translation>
    </message>
    <message>
        <source>Volume that may be purged without an open burner</source>
        <translation>Cyfaint y gellir ei garthu heb losgydd agored</translation>
    </message>
    <message>
        <source>Share of the pipes&apos; volume added for fittings</source>
        <translation>Cyfran o gyfaint y pibellau a ychwanegir am ffitiadau</translation>
    </message>
    <message>
        <source>Standing pressure (regulator lock-up)</source>
        <translation>Pwysedd sefydlog (cloi’r rheolydd)</translation>
    </message>
    <message>
        <source>Temperature change assumed during the test</source>
        <translation>Newid tymheredd a dybir yn ystod y prawf</translation>
    </message>
    <message>
        <source>Calorific value (gross) where the bill gives none</source>
        <translation>Gwerth caloriffig (gros) lle nad yw’r bil yn rhoi un</translation>
    </message>
    <message>
        <source>Network gas, lowest Wobbe index (gross)</source>
        <translation>Nwy rhwydwaith, indecs Wobbe isaf (gros)</translation>
    </message>
    <message>
        <source>Network gas, highest Wobbe index (gross)</source>
        <translation>Nwy rhwydwaith, indecs Wobbe uchaf (gros)</translation>
    </message>
    <message>
        <source>Network gas, highest relative density</source>
        <translation>Nwy rhwydwaith, dwysedd cymharol uchaf</translation>
    </message>
    <message>
        <source>Network gas, calorific values (gross) that are seen</source>
        <translation>Nwy rhwydwaith, gwerthoedd caloriffig (gros) a welir</translation>
    </message>
    <message>
        <source>Pressure drop from meter to appliance</source>
        <translation>Cwymp pwysedd o’r mesurydd i’r cyfarpar</translation>
    </message>
    <message>
        <source>Pipe efficiency, share of the smooth-pipe law&apos;s flow</source>
        <translation>Effeithlonrwydd pibell, cyfran o lif y ddeddf pibell lefn</translation>
    </message>
    <message>
        <source>Equivalent length before 2015, copper to 28 mm, elbow</source>
        <translation>Hyd cyfwerth cyn 2015, copr hyd at 28 mm, penelin</translation>
    </message>
    <message>
        <source>Equivalent length before 2015, copper to 28 mm, bend</source>
        <translation>Hyd cyfwerth cyn 2015, copr hyd at 28 mm, plyg</translation>
    </message>
    <message>
        <source>Equivalent length before 2015, copper to 28 mm, 45° bend</source>
        <translation>Hyd cyfwerth cyn 2015, copr hyd at 28 mm, plyg 45°</translation>
    </message>
    <message>
        <source>Equivalent length before 2015, copper to 28 mm, tee</source>
        <translation>Hyd cyfwerth cyn 2015, copr hyd at 28 mm, ti</translation>
    </message>
    <message>
        <source>Equivalent length from 2015, 15 mm copper, elbow</source>
        <translation>Hyd cyfwerth o 2015, copr 15 mm, penelin</translation>
    </message>
    <message>
        <source>Equivalent length from 2015, 15 mm copper, bend</source>
        <translation>Hyd cyfwerth o 2015, copr 15 mm, plyg</translation>
    </message>
    <message>
        <source>Equivalent length from 2015, 15 mm copper, 45° bend</source>
        <translation>Hyd cyfwerth o 2015, copr 15 mm, plyg 45°</translation>
    </message>
    <message>
        <source>Equivalent length from 2015, 15 mm copper, tee</source>
        <translation>Hyd cyfwerth o 2015, copr 15 mm, ti</translation>
    </message>
    <message>
        <source>Equivalent length from 2015, 22 mm copper, elbow</source>
        <translation>Hyd cyfwerth o 2015, copr 22 mm, penelin</translation>
    </message>
    <message>
        <source>Equivalent length from 2015, 22 mm copper, bend</source>
        <translation>Hyd cyfwerth o 2015, copr 22 mm, plyg</translation>
    </message>
    <message>
        <source>Equivalent length from 2015, 22 mm copper, 45° bend</source>
        <translation>Hyd cyfwerth o 2015, copr 22 mm, plyg 45°</translation>
    </message>
    <message>
        <source>Equivalent length from 2015, 22 mm copper, tee</source>
        <translation>Hyd cyfwerth o 2015, copr 22 mm, ti</translation>
    </message>
    <message>
        <source>Equivalent length from 2015, 28 mm copper, elbow</source>
        <translation>Hyd cyfwerth o 2015, copr 28 mm, penelin</translation>
    </message>
    <message>
        <source>Equivalent length from 2015, 28 mm copper, bend</source>
        <translation>Hyd cyfwerth o 2015, copr 28 mm, plyg</translation>
    </message>
    <message>
        <source>Equivalent length from 2015, 28 mm copper, 45° bend</source>
        <translation>Hyd cyfwerth o 2015, copr 28 mm, plyg 45°</translation>
    </message>
    <message>
        <source>Equivalent length from 2015, 28 mm copper, tee</source>
        <translation>Hyd cyfwerth o 2015, copr 28 mm, ti</translation>
    </message>
    <message>
        <source>Equivalent length from 2015, 35 mm copper, elbow</source>
        <translation>Hyd cyfwerth o 2015, copr 35 mm, penelin</translation>
    </message>
    <message>
        <source>Equivalent length from 2015, 35 mm copper, bend</source>
        <translation>Hyd cyfwerth o 2015, copr 35 mm, plyg</translation>
    </message>
    <message>
        <source>Equivalent length from 2015, 35 mm copper, 45° bend</source>
        <translation>Hyd cyfwerth o 2015, copr 35 mm, plyg 45°</translation>
    </message>
    <message>
        <source>Equivalent length from 2015, 35 mm copper, tee</source>
        <translation>Hyd cyfwerth o 2015, copr 35 mm, ti</translation>
    </message>
    <message>
        <source>Purge volume, larger installation, times pipe and fittings</source>
        <translation>Cyfaint carthu, gosodiad mwy, lluosrif o bibellau a ffitiadau</translation>
    </message>
    <message>
        <source>Purge volume, larger installation, times the meter&apos;s cyclic volume</source>
        <translation>Cyfaint carthu, gosodiad mwy, lluosrif o gyfaint cylchol y mesurydd</translation>
    </message>
    <message>
        <source>Least purge speed to DN 150, in metres a second</source>
        <translation>Cyflymder carthu lleiaf hyd at DN 150, metrau yr eiliad</translation>
    </message>
    <message>
        <source>Least purge speed from DN 200, in metres a second</source>
        <translation>Cyflymder carthu lleiaf o DN 200, metrau yr eiliad</translation>
    </message>
    <message>
        <source>Least purge flow, DN 20</source>
        <translation>Llif carthu lleiaf, DN 20</translation>
    </message>
    <message>
        <source>Least purge flow, DN 25</source>
        <translation>Llif carthu lleiaf, DN 25</translation>
    </message>
    <message>
        <source>Least purge flow, DN 32</source>
        <translation>Llif carthu lleiaf, DN 32</translation>
    </message>
    <message>
        <source>Least purge flow, DN 40</source>
        <translation>Llif carthu lleiaf, DN 40</translation>
    </message>
    <message>
        <source>Least purge flow, DN 50</source>
        <translation>Llif carthu lleiaf, DN 50</translation>
    </message>
    <message>
        <source>Least purge flow, DN 65</source>
        <translation>Llif carthu lleiaf, DN 65</translation>
    </message>
    <message>
        <source>Least purge flow, DN 80</source>
        <translation>Llif carthu lleiaf, DN 80</translation>
    </message>
    <message>
        <source>Least purge flow, DN 100</source>
        <translation>Llif carthu lleiaf, DN 100</translation>
    </message>
    <message>
        <source>Least purge flow, DN 125</source>
        <translation>Llif carthu lleiaf, DN 125</translation>
    </message>
    <message>
        <source>Least purge flow, DN 150</source>
        <translation>Llif carthu lleiaf, DN 150</translation>
    </message>
    <message>
        <source>Cyclic volume, U6 / G4 meter</source>
        <translation>Cyfaint cylchol, mesurydd U6 / G4</translation>
    </message>
    <message>
        <source>Cyclic volume, U16 / G10 meter</source>
        <translation>Cyfaint cylchol, mesurydd U16 / G10</translation>
    </message>
    <message>
        <source>Cyclic volume, U25 / G16 meter</source>
        <translation>Cyfaint cylchol, mesurydd U25 / G16</translation>
    </message>
    <message>
        <source>Cyclic volume, U40 / G25 meter</source>
        <translation>Cyfaint cylchol, mesurydd U40 / G25</translation>
    </message>
    <message>
        <source>Cyclic volume, U65 / G40 meter</source>
        <translation>Cyfaint cylchol, mesurydd U65 / G40</translation>
    </message>
    <message>
        <source>Cyclic volume, U100 / G65 meter</source>
        <translation>Cyfaint cylchol, mesurydd U100 / G65</translation>
    </message>
    <message>
        <source>Cyclic volume, U160 / G100 meter</source>
        <translation>Cyfaint cylchol, mesurydd U160 / G100</translation>
    </message>
    <message>
        <source>Share of gas that ends a purge</source>
        <translation>Cyfran o nwy sy’n dod â charthu i ben</translation>
    </message>
    <message>
        <source>Scope of IGE/UP/1A, installation volume</source>
        <translation>Cwmpas IGE/UP/1A, cyfaint y gosodiad</translation>
    </message>
    <message>
        <source>Scope of IGE/UP/1A, pipe size</source>
        <translation>Cwmpas IGE/UP/1A, maint pibell</translation>
    </message>
    <message>
        <source>Scope of IGE/UP/1A, operating pressure</source>
        <translation>Cwmpas IGE/UP/1A, pwysedd gweithredu</translation>
    </message>
    <message>
        <source>Scope of IGE/UP/1, maximum operating pressure</source>
        <translation>Cwmpas IGE/UP/1, pwysedd gweithredu mwyaf</translation>
    </message>
    <message>
        <source>Readable movement, water gauge to 120 mbar</source>
        <translation>Symudiad darllenadwy, medrydd dŵr hyd at 120 mbar</translation>
    </message>
    <message>
        <source>Readable movement, gauge with dense fluid (1.99) to 200 mbar</source>
        <translation>Symudiad darllenadwy, medrydd hylif trwm (1.99) hyd at 200 mbar</translation>
    </message>
    <message>
        <source>Readable movement, mercury gauge to 1000 mbar</source>
        <translation>Symudiad darllenadwy, medrydd mercwri hyd at 1000 mbar</translation>
    </message>
    <message>
        <source>Readable movement, electronic gauge with one decimal to 200 mbar</source>
        <translation>Symudiad darllenadwy, medrydd electronig un lle degol hyd at 200 mbar</translation>
    </message>
    <message>
        <source>Readable movement, electronic gauge with two decimals to 200 mbar</source>
        <translation>Symudiad darllenadwy, medrydd electronig dau le degol hyd at 200 mbar</translation>
    </message>
    <message>
        <source>Readable movement, electronic gauge with one decimal above 200 to 2000 mbar</source>
        <translation>Symudiad darllenadwy, medrydd electronig un lle degol dros 200 hyd at 2000 mbar</translation>
    </message>
    <message>
        <source>Readable movement, electronic gauge without decimals to 20 bar</source>
        <translation>Symudiad darllenadwy, medrydd electronig heb leoedd degol hyd at 20 bar</translation>
    </message>
    <message>
        <source>Longest tightness test, water gauge to 120 mbar</source>
        <translation>Prawf tyndra hwyaf, medrydd dŵr hyd at 120 mbar</translation>
    </message>
    <message>
        <source>Longest tightness test, gauge with dense fluid (1.99) to 200 mbar</source>
        <translation>Prawf tyndra hwyaf, medrydd hylif trwm (1.99) hyd at 200 mbar</translation>
    </message>
    <message>
        <source>Longest tightness test, mercury gauge to 1000 mbar</source>
        <translation>Prawf tyndra hwyaf, medrydd mercwri hyd at 1000 mbar</translation>
    </message>
    <message>
        <source>Longest tightness test, electronic gauge with one decimal to 200 mbar</source>
        <translation>Prawf tyndra hwyaf, medrydd electronig un lle degol hyd at 200 mbar</translation>
    </message>
    <message>
        <source>Longest tightness test, electronic gauge with two decimals to 200 mbar</source>
        <translation>Prawf tyndra hwyaf, medrydd electronig dau le degol hyd at 200 mbar</translation>
    </message>
    <message>
        <source>Longest tightness test, electronic gauge with one decimal above 200 to 2000 mbar</source>
        <translation>Prawf tyndra hwyaf, medrydd electronig un lle degol dros 200 hyd at 2000 mbar</translation>
    </message>
    <message>
        <source>Longest tightness test, electronic gauge without decimals to 20 bar</source>
        <translation>Prawf tyndra hwyaf, medrydd electronig heb leoedd degol hyd at 20 bar</translation>
    </message>
    <message>
        <source>Least time of a tightness test, larger installation</source>
        <translation>Amser lleiaf prawf tyndra, gosodiad mwy</translation>
    </message>
    <message>
        <source>Time factor F1, tested with the fuel gas</source>
        <translation>Ffactor amser F1, profwyd â’r nwy tanwydd</translation>
    </message>
    <message>
        <source>Time factor F1, tested with air or nitrogen</source>
        <translation>Ffactor amser F1, profwyd ag aer neu nitrogen</translation>
    </message>
    <message>
        <source>Time multiplier for a ventilated room (type B), divided by the room&apos;s m³</source>
        <translation>Lluosydd amser ar gyfer ystafell wedi’i hawyru (math B), wedi’i rannu â m³ yr ystafell</translation>
    </message>
    <message>
        <source>Time multiplier for a large ventilated room (type C)</source>
        <translation>Lluosydd amser ar gyfer ystafell fawr wedi’i hawyru (math C)</translation>
    </message>
    <message>
        <source>Leak factor F3, tested with the fuel gas</source>
        <translation>Ffactor gollwng F3, profwyd â’r nwy tanwydd</translation>
    </message>
    <message>
        <source>Leak factor F3, tested with air or nitrogen</source>
        <translation>Ffactor gollwng F3, profwyd ag aer neu nitrogen</translation>
    </message>
    <message>
        <source>Leak permitted, new pipework of a larger installation</source>
        <translation>Gollyngiad a ganiateir, pibellau newydd gosodiad mwy</translation>
    </message>
    <message>
        <source>Leak permitted, existing, small or poorly ventilated room (type A)</source>
        <translation>Gollyngiad a ganiateir, presennol, ystafell fach neu wedi’i hawyru’n wael (math A)</translation>
    </message>
    <message>
        <source>Leak permitted, existing, ventilated room (type B), m³/h for each m³ of room</source>
        <translation>Gollyngiad a ganiateir, presennol, ystafell wedi’i hawyru (math B), m³/h am bob m³ o ystafell</translation>
    </message>
    <message>
        <source>Leak permitted, existing, large ventilated room (type C)</source>
        <translation>Gollyngiad a ganiateir, presennol, ystafell fawr wedi’i hawyru (math C)</translation>
    </message>
    <message>
        <source>Least volume of a room that counts as type C</source>
        <translation>Cyfaint lleiaf ystafell sy’n cyfrif fel math C</translation>
    </message>
    <message>
        <source>Leak permitted, existing, in the open</source>
        <translation>Gollyngiad a ganiateir, presennol, yn yr awyr agored</translation>
    </message>
    <message>
        <source>Leak permitted, existing, buried</source>
        <translation>Gollyngiad a ganiateir, presennol, wedi’i gladdu</translation>
    </message>
    <message>
        <source>Let-by pressure of a larger installation, share of the operating pressure</source>
        <translation>Pwysedd gollwng heibio gosodiad mwy, cyfran o’r pwysedd gweithredu</translation>
    </message>
    <message>
        <source>Let-by time, larger installation</source>
        <translation>Amser gollwng heibio, gosodiad mwy</translation>
    </message>
    <message>
        <source>Settling time, larger installation</source>
        <translation>Amser sefydlogi, gosodiad mwy</translation>
    </message>
    <message>
        <source>Test pressure of a larger installation, share of the operating pressure</source>
        <translation>Pwysedd prawf gosodiad mwy, cyfran o’r pwysedd gweithredu</translation>
    </message>
    <message>
        <source>Strength test, times the maximum incidental pressure</source>
        <translation>Prawf cryfder, lluosrif o’r pwysedd achlysurol mwyaf</translation>
    </message>
    <message>
        <source>Strength test, operating pressure to which the low band goes</source>
        <translation>Prawf cryfder, pwysedd gweithredu hyd at yr hwn yr â’r band isel</translation>
    </message>
    <message>
        <source>Strength test, operating pressure to which the middle band goes</source>
        <translation>Prawf cryfder, pwysedd gweithredu hyd at yr hwn yr â’r band canol</translation>
    </message>
    <message>
        <source>Strength test, times the maximum operating pressure, low band</source>
        <translation>Prawf cryfder, lluosrif o’r pwysedd gweithredu mwyaf, band isel</translation>
    </message>
    <message>
        <source>Strength test, times the maximum operating pressure, middle band</source>
        <translation>Prawf cryfder, lluosrif o’r pwysedd gweithredu mwyaf, band canol</translation>
    </message>
    <message>
        <source>Strength test, times the maximum operating pressure, high band</source>
        <translation>Prawf cryfder, lluosrif o’r pwysedd gweithredu mwyaf, band uchel</translation>
    </message>
    <message>
        <source>Strength test, settling time, low band</source>
        <translation>Prawf cryfder, amser sefydlogi, band isel</translation>
    </message>
    <message>
        <source>Strength test, settling time, middle band</source>
        <translation>Prawf cryfder, amser sefydlogi, band canol</translation>
    </message>
    <message>
        <source>Strength test, settling time, high band</source>
        <translation>Prawf cryfder, amser sefydlogi, band uchel</translation>
    </message>
    <message>
        <source>Strength test, time held, low band</source>
        <translation>Prawf cryfder, amser dal, band isel</translation>
    </message>
    <message>
        <source>Strength test, time held, middle band</source>
        <translation>Prawf cryfder, amser dal, band canol</translation>
    </message>
    <message>
        <source>Strength test, time held, high band</source>
        <translation>Prawf cryfder, amser dal, band uchel</translation>
    </message>
    <message>
        <source>Strength test, share of the pressure that it may fall by, low band</source>
        <translation>Prawf cryfder, cyfran o’r pwysedd y caiff gwympo, band isel</translation>
    </message>
    <message>
        <source>Strength test, share of the pressure that it may fall by, middle band</source>
        <translation>Prawf cryfder, cyfran o’r pwysedd y caiff gwympo, band canol</translation>
    </message>
    <message>
        <source>Strength test, share of the pressure that it may fall by, high band</source>
        <translation>Prawf cryfder, cyfran o’r pwysedd y caiff gwympo, band uchel</translation>
    </message>
    <message>
        <source>Meter accuracy</source>
        <translation>Cywirdeb y mesurydd</translation>
    </message>
    <message>
        <source>Slip of the hand at a stopwatch</source>
        <translation>Llithriad y llaw ar stopwats</translation>
    </message>
    <message>
        <source>Metered volume to standard conditions, fixed factor</source>
        <translation>Cyfaint a fesurwyd i amodau safonol, ffactor sefydlog</translation>
    </message>
    <message>
        <source>Heat input above the plate</source>
        <translation>Mewnbwn gwres uwchlaw’r plât</translation>
    </message>
    <message>
        <source>Heat input below the plate</source>
        <translation>Mewnbwn gwres islaw’r plât</translation>
    </message>
    <message>
        <source>Time for the average at the meter</source>
        <translation>Amser ar gyfer y cyfartaledd wrth y mesurydd</translation>
    </message>
    <message>
        <source>Hot water flow</source>
        <translation>Llif dŵr poeth</translation>
    </message>
    <message>
        <source>Hot water output over net heat input</source>
        <translation>Allbwn dŵr poeth dros fewnbwn gwres net</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio, condensing boiler</source>
        <translation>Cymhareb CO/CO₂, boeler cyddwyso</translation>
    </message>
    <message>
        <source>CO in the flue gas, condensing boiler</source>
        <translation>CO yn y nwy ffliw, boeler cyddwyso</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio, non-condensing boiler</source>
        <translation>Cymhareb CO/CO₂, boeler nid cyddwyso</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio, warm-air heater or circulator</source>
        <translation>Cymhareb CO/CO₂, gwresogydd aer cynnes neu gylchredydd</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio, back boiler</source>
        <translation>Cymhareb CO/CO₂, boeler cefn</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio, fire of a back boiler unit</source>
        <translation>Cymhareb CO/CO₂, tân uned boeler cefn</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio, gas fire or open-flued space heater</source>
        <translation>Cymhareb CO/CO₂, tân nwy neu wresogydd ffliw agored</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio, open-flued water heater</source>
        <translation>Cymhareb CO/CO₂, gwresogydd dŵr ffliw agored</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio, room-sealed water heater</source>
        <translation>Cymhareb CO/CO₂, gwresogydd dŵr seliedig o’r ystafell</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio, flueless space heater</source>
        <translation>Cymhareb CO/CO₂, gwresogydd gofod di-ffliw</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio, flueless water heater</source>
        <translation>Cymhareb CO/CO₂, gwresogydd dŵr di-ffliw</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio, oven</source>
        <translation>Cymhareb CO/CO₂, popty</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio, grill</source>
        <translation>Cymhareb CO/CO₂, gril</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio, flued range cooker</source>
        <translation>Cymhareb CO/CO₂, popty mawr â ffliw</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio, tumble dryer</source>
        <translation>Cymhareb CO/CO₂, sychwr dillad</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio</source>
        <translation>Cymhareb CO/CO₂</translation>
    </message>
    <message>
        <source>CO in the flue gas</source>
        <translation>CO yn y nwy ffliw</translation>
    </message>
    <message>
        <source>CO₂ in the flue gas</source>
        <translation>CO₂ yn y nwy ffliw</translation>
    </message>
    <message>
        <source>O₂ and CO₂ off the fuel&apos;s line</source>
        <translation>O₂ a CO₂ oddi ar linell y tanwydd</translation>
    </message>
    <message>
        <source>Heat input that air leaking into a room serves</source>
        <translation>Mewnbwn gwres y mae aer sy’n gollwng i ystafell yn ei wasanaethu</translation>
    </message>
    <message>
        <source>Vent for open-flued appliances, cm² for each further kW</source>
        <translation>Awyrell ar gyfer cyfarpar ffliw agored, cm² am bob kW pellach</translation>
    </message>
    <message>
        <source>Scope of the domestic ventilation standard, heat input in one space</source>
        <translation>Cwmpas y safon awyru ddomestig, mewnbwn gwres mewn un gofod</translation>
    </message>
    <message>
        <source>Vents through an inside wall, times the area</source>
        <translation>Awyrellau drwy wal fewnol, lluosrif o’r arwynebedd</translation>
    </message>
    <message>
        <source>Vent for open-flued appliances in a tight dwelling, cm² for each kW</source>
        <translation>Awyrell ar gyfer cyfarpar ffliw agored mewn annedd dynn, cm² am bob kW</translation>
    </message>
    <message>
        <source>Several appliances in a room, how many groups&apos; needs are added</source>
        <translation>Sawl cyfarpar mewn ystafell, anghenion faint o grwpiau a adir</translation>
    </message>
    <message>
        <source>Vent for a decorative fuel effect fire</source>
        <translation>Awyrell ar gyfer tân nwy addurniadol</translation>
    </message>
    <message>
        <source>Decorative fuel effect fire, heat input</source>
        <translation>Tân nwy addurniadol, mewnbwn gwres</translation>
    </message>
    <message>
        <source>Radiant or inset fire without a vent, heat input</source>
        <translation>Tân pelydrol neu fewnosod heb awyrell, mewnbwn gwres</translation>
    </message>
    <message>
        <source>Vent that the appliance&apos;s maker asks for</source>
        <translation>Awyrell y mae gwneuthurwr y cyfarpar yn gofyn amdani</translation>
    </message>
    <message>
        <source>Compartment, open-flued, high vent to a room, cm² for each kW</source>
        <translation>Adran, ffliw agored, awyrell uchel i ystafell, cm² am bob kW</translation>
    </message>
    <message>
        <source>Compartment, open-flued, low vent to a room, cm² for each kW</source>
        <translation>Adran, ffliw agored, awyrell isel i ystafell, cm² am bob kW</translation>
    </message>
    <message>
        <source>Compartment, open-flued, high vent to outside, cm² for each kW</source>
        <translation>Adran, ffliw agored, awyrell uchel i’r tu allan, cm² am bob kW</translation>
    </message>
    <message>
        <source>Compartment, open-flued, low vent to outside, cm² for each kW</source>
        <translation>Adran, ffliw agored, awyrell isel i’r tu allan, cm² am bob kW</translation>
    </message>
    <message>
        <source>Compartment, room-sealed, high vent to a room, cm² for each kW</source>
        <translation>Adran, seliedig o’r ystafell, awyrell uchel i ystafell, cm² am bob kW</translation>
    </message>
    <message>
        <source>Compartment, room-sealed, low vent to a room, cm² for each kW</source>
        <translation>Adran, seliedig o’r ystafell, awyrell isel i ystafell, cm² am bob kW</translation>
    </message>
    <message>
        <source>Compartment, room-sealed, high vent to outside, cm² for each kW</source>
        <translation>Adran, seliedig o’r ystafell, awyrell uchel i’r tu allan, cm² am bob kW</translation>
    </message>
    <message>
        <source>Compartment, room-sealed, low vent to outside, cm² for each kW</source>
        <translation>Adran, seliedig o’r ystafell, awyrell isel i’r tu allan, cm² am bob kW</translation>
    </message>
    <message>
        <source>Cooker, room below which the larger vent is needed</source>
        <translation>Popty, ystafell y mae angen yr awyrell fwy islaw iddi</translation>
    </message>
    <message>
        <source>Cooker, room up to which the smaller vent is needed</source>
        <translation>Popty, ystafell y mae angen yr awyrell lai hyd ati</translation>
    </message>
    <message>
        <source>Cooker, vent in the smallest rooms</source>
        <translation>Popty, awyrell yn yr ystafelloedd lleiaf</translation>
    </message>
    <message>
        <source>Cooker, vent in small rooms</source>
        <translation>Popty, awyrell mewn ystafelloedd bach</translation>
    </message>
    <message>
        <source>Cooker in a bed-sitting room, room volume</source>
        <translation>Popty mewn ystafell fyw a chysgu, cyfaint yr ystafell</translation>
    </message>
    <message>
        <source>Cooker in a basement, vent advised</source>
        <translation>Popty mewn islawr, awyrell a gynghorir</translation>
    </message>
    <message>
        <source>Flueless water heater, heat input</source>
        <translation>Gwresogydd dŵr di-ffliw, mewnbwn gwres</translation>
    </message>
    <message>
        <source>Flueless water heater, room volume</source>
        <translation>Gwresogydd dŵr di-ffliw, cyfaint yr ystafell</translation>
    </message>
    <message>
        <source>Flueless water heater, room up to which the larger vent is needed</source>
        <translation>Gwresogydd dŵr di-ffliw, ystafell y mae angen yr awyrell fwy hyd ati</translation>
    </message>
    <message>
        <source>Flueless water heater, room up to which the smaller vent is needed</source>
        <translation>Gwresogydd dŵr di-ffliw, ystafell y mae angen yr awyrell lai hyd ati</translation>
    </message>
    <message>
        <source>Flueless water heater, vent in small rooms</source>
        <translation>Gwresogydd dŵr di-ffliw, awyrell mewn ystafelloedd bach</translation>
    </message>
    <message>
        <source>Flueless water heater, vent in medium rooms</source>
        <translation>Gwresogydd dŵr di-ffliw, awyrell mewn ystafelloedd canolig</translation>
    </message>
    <message>
        <source>Flueless space heater in a room, W for each m³</source>
        <translation>Gwresogydd gofod di-ffliw mewn ystafell, W am bob m³</translation>
    </message>
    <message>
        <source>Flueless space heater in an internal space, W for each m³</source>
        <translation>Gwresogydd gofod di-ffliw mewn gofod mewnol, W am bob m³</translation>
    </message>
    <message>
        <source>Flueless space heater, vent to begin with</source>
        <translation>Gwresogydd gofod di-ffliw, awyrell i ddechrau</translation>
    </message>
    <message>
        <source>Flueless space heater in a room, heat input that the first vent serves</source>
        <translation>Gwresogydd gofod di-ffliw mewn ystafell, mewnbwn gwres y mae’r awyrell gyntaf yn ei wasanaethu</translation>
    </message>
    <message>
        <source>Flueless space heater in a room, cm² for each further kW</source>
        <translation>Gwresogydd gofod di-ffliw mewn ystafell, cm² am bob kW pellach</translation>
    </message>
    <message>
        <source>Flueless space heater in an internal space, heat input that the first vent serves</source>
        <translation>Gwresogydd gofod di-ffliw mewn gofod mewnol, mewnbwn gwres y mae’r awyrell gyntaf yn ei wasanaethu</translation>
    </message>
    <message>
        <source>Flueless space heater in an internal space, cm² for each further kW</source>
        <translation>Gwresogydd gofod di-ffliw mewn gofod mewnol, cm² am bob kW pellach</translation>
    </message>
    <message>
        <source>LPG cabinet heater in a room, W for each m³</source>
        <translation>Gwresogydd cabinet LPG mewn ystafell, W am bob m³</translation>
    </message>
    <message>
        <source>LPG cabinet heater in an internal space, W for each m³</source>
        <translation>Gwresogydd cabinet LPG mewn gofod mewnol, W am bob m³</translation>
    </message>
    <message>
        <source>LPG cabinet heater, room volume</source>
        <translation>Gwresogydd cabinet LPG, cyfaint yr ystafell</translation>
    </message>
    <message>
        <source>LPG cabinet heater, cm² for each kW at high and at low level</source>
        <translation>Gwresogydd cabinet LPG, cm² am bob kW ar lefel uchel ac isel</translation>
    </message>
    <message>
        <source>LPG cabinet heater, least vent at high and at low level</source>
        <translation>Gwresogydd cabinet LPG, awyrell leiaf ar lefel uchel ac isel</translation>
    </message>
    <message>
        <source>Flueless tumble dryer, vent</source>
        <translation>Sychwr dillad di-ffliw, awyrell</translation>
    </message>
    <message>
        <source>Scope of the boiler room standard, heat input</source>
        <translation>Cwmpas safon yr ystafell foeleri, mewnbwn gwres</translation>
    </message>
    <message>
        <source>Boiler room, low vent to outside, cm² for each kW</source>
        <translation>Ystafell foeleri, awyrell isel i’r tu allan, cm² am bob kW</translation>
    </message>
    <message>
        <source>Boiler room, high vent to outside, cm² for each kW</source>
        <translation>Ystafell foeleri, awyrell uchel i’r tu allan, cm² am bob kW</translation>
    </message>
    <message>
        <source>Boiler enclosure, low vent, used up to half of the summer, cm² for each kW</source>
        <translation>Lloc boeler, awyrell isel, yn cael ei ddefnyddio hyd at hanner yr haf, cm² am bob kW</translation>
    </message>
    <message>
        <source>Boiler enclosure, high vent, used up to half of the summer, cm² for each kW</source>
        <translation>Lloc boeler, awyrell uchel, yn cael ei ddefnyddio hyd at hanner yr haf, cm² am bob kW</translation>
    </message>
    <message>
        <source>Boiler enclosure, low vent, used half to three quarters of the summer, cm² for each kW</source>
        <translation>Lloc boeler, awyrell isel, yn cael ei ddefnyddio hanner i dri chwarter yr haf, cm² am bob kW</translation>
    </message>
    <message>
        <source>Boiler enclosure, high vent, used half to three quarters of the summer, cm² for each kW</source>
        <translation>Lloc boeler, awyrell uchel, yn cael ei ddefnyddio hanner i dri chwarter yr haf, cm² am bob kW</translation>
    </message>
    <message>
        <source>Boiler enclosure, low vent, used most of the summer, cm² for each kW</source>
        <translation>Lloc boeler, awyrell isel, yn cael ei ddefnyddio’r rhan fwyaf o’r haf, cm² am bob kW</translation>
    </message>
    <message>
        <source>Boiler enclosure, high vent, used most of the summer, cm² for each kW</source>
        <translation>Lloc boeler, awyrell uchel, yn cael ei ddefnyddio’r rhan fwyaf o’r haf, cm² am bob kW</translation>
    </message>
    <message>
        <source>Boiler room used half to three quarters of the summer, cm² added for each kW</source>
        <translation>Ystafell foeleri a ddefnyddir hanner i dri chwarter yr haf, cm² a ychwanegir am bob kW</translation>
    </message>
    <message>
        <source>Boiler room used most of the summer, cm² added for each kW</source>
        <translation>Ystafell foeleri a ddefnyddir y rhan fwyaf o’r haf, cm² a ychwanegir am bob kW</translation>
    </message>
    <message>
        <source>Boiler room temperature, 100 mm above the floor</source>
        <translation>Tymheredd ystafell foeleri, 100 mm uwchlaw’r llawr</translation>
    </message>
    <message>
        <source>Boiler room temperature, at 1.5 m</source>
        <translation>Tymheredd ystafell foeleri, ar 1.5 m</translation>
    </message>
    <message>
        <source>Boiler room temperature, 100 mm below the ceiling</source>
        <translation>Tymheredd ystafell foeleri, 100 mm islaw’r nenfwd</translation>
    </message>
    <message>
        <source>Carbon monoxide at work, mean of 15 minutes</source>
        <translation>Carbon monocsid yn y gwaith, cymedr 15 munud</translation>
    </message>
    <message>
        <source>Carbon monoxide at work, mean of 8 hours</source>
        <translation>Carbon monocsid yn y gwaith, cymedr 8 awr</translation>
    </message>
    <message>
        <source>Carbon monoxide, any reading that warns everyone to leave</source>
        <translation>Carbon monocsid, unrhyw ddarlleniad sy’n rhybuddio pawb i adael</translation>
    </message>
    <message>
        <source>Carbon monoxide, any reading that warns to find the source</source>
        <translation>Carbon monocsid, unrhyw ddarlleniad sy’n rhybuddio i ddod o hyd i’r ffynhonnell</translation>
    </message>
    <message>
        <source>Room carbon monoxide that needs no action</source>
        <translation>Carbon monocsid ystafell nad oes angen gweithredu arno</translation>
    </message>
    <message>
        <source>Room carbon monoxide at which everyone leaves</source>
        <translation>Carbon monocsid ystafell y mae pawb yn gadael ar ei gyfer</translation>
    </message>
    <message>
        <source>Room carbon monoxide, short peak of a cooker</source>
        <translation>Carbon monocsid ystafell, brig byr popty</translation>
    </message>
    <message>
        <source>Room carbon monoxide, height of sampling</source>
        <translation>Carbon monocsid ystafell, uchder samplu</translation>
    </message>
    <message>
        <source>Room carbon monoxide, distance from the appliance</source>
        <translation>Carbon monocsid ystafell, pellter o’r cyfarpar</translation>
    </message>
    <message>
        <source>Room carbon monoxide test with flued appliances, time</source>
        <translation>Prawf carbon monocsid ystafell gyda chyfarpar â ffliw, amser</translation>
    </message>
    <message>
        <source>Room carbon monoxide test with flueless appliances, time</source>
        <translation>Prawf carbon monocsid ystafell gyda chyfarpar di-ffliw, amser</translation>
    </message>
    <message>
        <source>Carbon monoxide in the blood that guidelines mean to stay below</source>
        <translation>Carbon monocsid yn y gwaed y bwriada canllawiau aros islaw iddo</translation>
    </message>
    <message>
        <source>Photographs</source>
        <translation>Ffotograffau</translation>
    </message>
    <message>
        <source>Tested and signed by (name typed)</source>
        <translation>Profwyd a llofnodwyd gan (enw wedi’i deipio)</translation>
    </message>
    <message>
        <source>Tested and signed by</source>
        <translation>Profwyd a llofnodwyd gan</translation>
    </message>
    <message>
        <source>Checked and signed by (name typed)</source>
        <translation>Gwiriwyd a llofnodwyd gan (enw wedi’i deipio)</translation>
    </message>
    <message>
        <source>Checked and signed by</source>
        <translation>Gwiriwyd a llofnodwyd gan</translation>
    </message>
    <message>
        <source>Signed by the engineer (name typed)</source>
        <translation>Llofnodwyd gan y peiriannydd (enw wedi’i deipio)</translation>
    </message>
    <message>
        <source>no name given</source>
        <translation>ni roddwyd enw</translation>
    </message>
    <message>
        <source>Received and understood by</source>
        <translation>Derbyniwyd a deallwyd gan</translation>
    </message>
    <message>
        <source>not present, copy left: %1</source>
        <translation>ddim yn bresennol, gadawyd copi: %1</translation>
    </message>
    <message>
        <source>signed on the paper copy</source>
        <translation>llofnodwyd ar y copi papur</translation>
    </message>
    <message>
        <source>card %1, %2</source>
        <translation>cerdyn %1, %2</translation>
    </message>
    <message>
        <source>The day on which the card of %1 runs out is not kept. Enter it under Firm, from the card.</source>
        <translation>Nid oes cofnod o’r diwrnod y daw cerdyn %1 i ben. Nodwch ef o dan Cwmni, o’r cerdyn.</translation>
    </message>
    <message>
        <source>The card of %1 ran out on %2. Whose registration has run out may not work on gas: enter the new card under Firm, or send somebody else.</source>
        <translation>Daeth cerdyn %1 i ben ar %2. Ni chaiff neb y mae ei gofrestriad wedi dod i ben weithio ar nwy: nodwch y cerdyn newydd o dan Cwmni, neu anfonwch rywun arall.</translation>
    </message>
    <message>
        <source>No categories of work are kept for %1. Enter them under Firm, from the back of the card.</source>
        <translation>Nid oes categorïau gwaith ar gadw ar gyfer %1. Nodwch nhw o dan Cwmni, o gefn y cerdyn.</translation>
    </message>
    <message>
        <source>None of the engineer&apos;s categories is known to cover this: the usual one is %1. Look at the back of the card before you work.</source>
        <translation>Ni wyddys fod yr un o gategorïau’r peiriannydd yn cwmpasu hyn: yr un arferol yw %1. Edrychwch ar gefn y cerdyn cyn gweithio.</translation>
    </message>
    <message>
        <source>The day on which the category %1 runs out is not kept. Enter it under Firm.</source>
        <translation>Nid oes cofnod o’r diwrnod y daw categori %1 i ben. Nodwch ef o dan Cwmni.</translation>
    </message>
    <message>
        <source>The category %1 ran out on %2. Do not work on this until it is renewed.</source>
        <translation>Daeth categori %1 i ben ar %2. Peidiwch â gweithio ar hyn nes ei adnewyddu.</translation>
    </message>
    <message>
        <source>No calibration date is kept for this analyser. Enter it under Firm, instruments.</source>
        <translation>Nid oes dyddiad graddnodi ar gadw ar gyfer y dadansoddydd hwn. Nodwch ef o dan Cwmni, offerynnau.</translation>
    </message>
    <message>
        <source>The analyser&apos;s calibration ran out on %1. Read again with one in calibration.</source>
        <translation>Daeth graddnodi’r dadansoddydd i ben ar %1. Darllenwch eto ag un sydd o fewn ei raddnodi.</translation>
    </message>
    <message>
        <source>Which category covers this kind of appliance is not known here. Look at the back of the card before you work.</source>
        <translation>Nid yw’n hysbys yma pa gategori sy’n cwmpasu’r math hwn o gyfarpar. Edrychwch ar gefn y cerdyn cyn gweithio.</translation>
    </message>
    <message>
        <source>The card of %1 will have run out on %2, before that day. Whose registration has run out may not work on gas: enter the new card under Firm once it is there, or send somebody else.</source>
        <translation>Bydd cerdyn %1 wedi dod i ben ar %2, cyn y diwrnod hwnnw. Ni chaiff neb y mae ei gofrestriad wedi dod i ben weithio ar nwy: nodwch y cerdyn newydd o dan Cwmni pan fydd ar gael, neu anfonwch rywun arall.</translation>
    </message>
    <message>
        <source>The category %1 will have run out on %2, before that day. It has to be renewed before this is worked on.</source>
        <translation>Bydd categori %1 wedi dod i ben ar %2, cyn y diwrnod hwnnw. Rhaid ei adnewyddu cyn gweithio ar hyn.</translation>
    </message>
    <message>
        <source>not said yet</source>
        <translation>heb ei nodi eto</translation>
    </message>
    <message>
        <source>Immediately Dangerous</source>
        <translation>Immediately Dangerous (perygl uniongyrchol)</translation>
    </message>
    <message>
        <source>At Risk</source>
        <translation>At Risk (mewn perygl)</translation>
    </message>
    <message>
        <source>Reminder</source>
        <translation>Nodyn atgoffa</translation>
    </message>
    <message>
        <source>No access</source>
        <translation>Dim mynediad</translation>
    </message>
    <message>
        <source>Covering letter</source>
        <translation>Llythyr eglurhaol</translation>
    </message>
    <message>
        <source>to whom the letter goes</source>
        <translation>at bwy y mae’r llythyr yn mynd</translation>
    </message>
    <message>
        <source>address of the premises</source>
        <translation>cyfeiriad yr eiddo</translation>
    </message>
    <message>
        <source>date by which the check is due</source>
        <translation>y dyddiad y mae’r archwiliad yn ddyledus erbyn</translation>
    </message>
    <message>
        <source>date when nobody could be let in</source>
        <translation>y dyddiad pan na ellid mynd i mewn</translation>
    </message>
    <message>
        <source>date of the work</source>
        <translation>dyddiad y gwaith</translation>
    </message>
    <message>
        <source>date of the letter</source>
        <translation>dyddiad y llythyr</translation>
    </message>
    <message>
        <source>name of the firm</source>
        <translation>enw’r cwmni</translation>
    </message>
    <message>
        <source>telephone of the firm</source>
        <translation>ffôn y cwmni</translation>
    </message>
    <message>
        <source>e-mail of the firm</source>
        <translation>e-bost y cwmni</translation>
    </message>
    <message>
        <source>registration number of the firm</source>
        <translation>rhif cofrestru’r cwmni</translation>
    </message>
    <message>
        <source>A habit of the trade, with no source. It advises; it neither passes nor fails anything alone.</source>
        <translation>Arfer y grefft, heb ffynhonnell. Mae’n cynghori; nid yw’n pasio nac yn methu dim ar ei ben ei hun.</translation>
    </message>
    <message>
        <source>Read in the law, in the standard&apos;s or its publisher&apos;s own words, or in a regulator&apos;s, register&apos;s or certification body&apos;s text. It decides.</source>
        <translation>Darllenwyd yn y gyfraith, yng ngeiriau’r safon neu ei chyhoeddwr, neu yn nhestun rheoleiddiwr, cofrestr neu gorff ardystio. Mae’n penderfynu.</translation>
    </message>
    <message>
        <source>Read in training notes or the trade press. Beyond it a test fails; within it, look again until the firm has confirmed it from its own copy.</source>
        <translation>Darllenwyd mewn nodiadau hyfforddi neu yng ngwasg y grefft. Y tu hwnt iddo mae prawf yn methu; o fewn iddo, edrych eto nes bod y cwmni wedi’i gadarnhau o’i gopi ei hun.</translation>
    </message>
    <message>
        <source>Recalled from the named standard, not read. Beyond it a test fails; within it, look again until the firm has confirmed it from its own copy. Nothing passes on memory alone.</source>
        <translation>O gof o’r safon a enwir, heb ei ddarllen. Y tu hwnt iddo mae prawf yn methu; o fewn iddo, edrych eto nes bod y cwmni wedi’i gadarnhau o’i gopi ei hun. Nid oes dim yn pasio ar gof yn unig.</translation>
    </message>
    <message>
        <source>Entered or confirmed by the firm from its own copy, with name and date. It decides, and replaces the value that came with the program.</source>
        <translation>Nodwyd neu cadarnhawyd gan y cwmni o’i gopi ei hun, gydag enw a dyddiad. Mae’n penderfynu, ac yn disodli’r gwerth a ddaeth gyda’r rhaglen.</translation>
    </message>
    <message>
        <source>From the appliance maker&apos;s instructions, kept with the appliance. It decides before all others.</source>
        <translation>O gyfarwyddiadau gwneuthurwr y cyfarpar, a gedwir gyda’r cyfarpar. Mae’n penderfynu cyn pob un arall.</translation>
    </message>
    <message>
        <source>Nothing can be said of a leak without the volume of what was tested: enter meter and pipework.</source>
        <translation>Ni ellir dweud dim am ollyngiad heb gyfaint yr hyn a brofwyd: nodwch y mesurydd a’r pibellau.</translation>
    </message>
    <message>
        <source>Too little to go by: say where the stages begin. A stage needs 20 readings over 20 seconds, above nought.</source>
        <translation>Rhy ychydig i farnu wrtho: dywedwch ble mae’r camau’n dechrau. Mae ar gam angen 20 darlleniad dros 20 eiliad, uwchlaw sero.</translation>
    </message>
    <message>
        <source>Settled when the timing began: settling alone could move the pressure by at most %1 in the timed minutes.</source>
        <translation>Wedi sefydlogi pan ddechreuodd yr amseru: gallai sefydlogi yn unig symud y pwysedd o %1 ar y mwyaf yn y munudau a amserwyd.</translation>
    </message>
    <message>
        <source>Not settled when the timing began: settling alone moves the pressure by about %1 in the timed minutes. Wait %2 more.</source>
        <translation>Heb sefydlogi pan ddechreuodd yr amseru: mae sefydlogi yn unig yn symud y pwysedd o tua %1 yn y munudau a amserwyd. Arhoswch %2 yn rhagor.</translation>
    </message>
    <message>
        <source>Not settled when the timing began: settling alone moves the pressure by about %1 in the timed minutes, and half an hour more would not do.</source>
        <translation>Heb sefydlogi pan ddechreuodd yr amseru: mae sefydlogi yn unig yn symud y pwysedd o tua %1 yn y munudau a amserwyd, ac ni fyddai hanner awr yn rhagor yn ddigon.</translation>
    </message>
    <message>
        <source>Whether it was settled when the timing began can&apos;t be told: wait %1 more to be sure.</source>
        <translation>Ni ellir dweud a oedd wedi sefydlogi pan ddechreuodd yr amseru: arhoswch %1 yn rhagor i fod yn siŵr.</translation>
    </message>
    <message>
        <source>Whether it was settled when the timing began can&apos;t be told.</source>
        <translation>Ni ellir dweud a oedd wedi sefydlogi pan ddechreuodd yr amseru.</translation>
    </message>
    <message>
        <source>Gas coming in at %1: %2, between %3 and %4, 95 times in a hundred.</source>
        <translation>Nwy’n dod i mewn ar %1: %2, rhwng %3 a %4, 95 gwaith mewn cant.</translation>
    </message>
    <message>
        <source>Leak at %1: %2, between %3 and %4, 95 times in a hundred.</source>
        <translation>Gollyngiad ar %1: %2, rhwng %3 a %4, 95 gwaith mewn cant.</translation>
    </message>
    <message>
        <source>Before it was connected the gauge stood at zero (%1).</source>
        <translation>Cyn ei gysylltu safai’r medrydd ar sero (%1).</translation>
    </message>
    <message>
        <source>Before it was connected the gauge read %1, which is not zero: zero it, and begin again.</source>
        <translation>Cyn ei gysylltu darllenai’r medrydd %1, nad yw’n sero: gosodwch ef ar sero, a dechreuwch eto.</translation>
    </message>
    <message>
        <source>A stuck gauge: it stands still though the pressure was changed. Nothing can be read from it; check the gauge and its tube, and test again.</source>
        <translation>Medrydd yn sownd: mae’n llonydd er i’r pwysedd gael ei newid. Ni ellir darllen dim oddi arno; gwiriwch y medrydd a’i diwb, a phrofwch eto.</translation>
    </message>
    <message>
        <source>Rising while the valve was shut for let-by: the valve lets by, or the pipe warms. Stop, and find out which.</source>
        <translation>Yn codi tra oedd y falf ar gau i wirio gollwng heibio: mae’r falf yn gollwng heibio, neu mae’r bibell yn cynhesu. Stopiwch, a chanfyddwch pa un.</translation>
    </message>
    <message>
        <source>A steady fall that cooling does not explain: look for a leak.</source>
        <translation>Cwymp cyson nad yw oeri’n ei egluro: chwiliwch am ollyngiad.</translation>
    </message>
    <message>
        <source>A leak that warming hides: without the warming the pressure would have fallen further. Look for a leak.</source>
        <translation>Gollyngiad y mae cynhesu’n ei guddio: heb y cynhesu byddai’r pwysedd wedi cwympo ymhellach. Chwiliwch am ollyngiad.</translation>
    </message>
    <message>
        <source>Rising steadily: gas lets by, or the pipe goes on warming.</source>
        <translation>Yn codi’n gyson: mae nwy’n gollwng heibio, neu mae’r bibell yn dal i gynhesu.</translation>
    </message>
    <message>
        <source>The fall is what cooling explains, as far as this trace can tell.</source>
        <translation>Y cwymp yw’r hyn y mae oeri’n ei egluro, hyd y gall yr olrhain hwn ddweud.</translation>
    </message>
    <message>
        <source>The rise is what warming explains, as far as this trace can tell.</source>
        <translation>Y codiad yw’r hyn y mae cynhesu’n ei egluro, hyd y gall yr olrhain hwn ddweud.</translation>
    </message>
    <message>
        <source>Nothing moves, as far as this trace can tell.</source>
        <translation>Nid oes dim yn symud, hyd y gall yr olrhain hwn ddweud.</translation>
    </message>
    <message>
        <source>Half of the pressure or more is gone: a leak or an open end, until it is shown to be neither. Look for it.</source>
        <translation>Mae hanner y pwysau neu fwy wedi mynd: gollyngiad neu ben agored ydyw, nes dangos nad yw’r naill na’r llall. Chwiliwch amdano.</translation>
    </message>
    <message>
        <source>Can&apos;t tell: wait longer, or take a finer gauge.</source>
        <translation>Ni ellir dweud: arhoswch yn hwy, neu cymerwch fedrydd manylach.</translation>
    </message>
    <message>
        <source>The smallest leak that this trace could have shown: %1.</source>
        <translation>Y gollyngiad lleiaf y gallai’r olrhain hwn fod wedi’i ddangos: %1.</translation>
    </message>
    <message>
        <source>In these figures the volume may be off by %1, either way.</source>
        <translation>Yn y ffigurau hyn gall y cyfaint fod yn anghywir o %1, y naill ffordd neu’r llall.</translation>
    </message>
    <message>
        <source>The volume is taken as exact.</source>
        <translation>Cymerir bod y cyfaint yn fanwl gywir.</translation>
    </message>
    <message>
        <source>A drift of the gauge of %1 in a minute, either way, is in these figures.</source>
        <translation>Mae drifft y medrydd o %1 mewn munud, y naill ffordd neu’r llall, yn y ffigurau hyn.</translation>
    </message>
    <message>
        <source>No drift of the gauge is in these figures.</source>
        <translation>Nid oes drifft y medrydd yn y ffigurau hyn.</translation>
    </message>
    <message>
        <source>Zero check at %1, open to the air: the gauge read %2, which is zero within its step of %3.</source>
        <translation>Gwirio’r sero am %1, yn agored i’r aer: darllenai’r medrydd %2, sy’n sero o fewn ei gam o %3.</translation>
    </message>
    <message>
        <source>Zero check at %1, open to the air: the gauge read %2, which is not zero within its step of %3.</source>
        <translation>Gwirio’r sero am %1, yn agored i’r aer: darllenai’r medrydd %2, nad yw’n sero o fewn ei gam o %3.</translation>
    </message>
    <message>
        <source>The first less the second: %1 when the timing began, %2 at its end, %3 where they were furthest apart (after %4).</source>
        <translation>Y cyntaf llai’r ail: %1 pan ddechreuodd yr amseru, %2 ar ei ddiwedd, %3 lle’r oeddent bellaf oddi wrth ei gilydd (ar ôl %4).</translation>
    </message>
    <message>
        <source>The first less the second: %1 at the beginning, %2 at the end, %3 where they were furthest apart (after %4).</source>
        <translation>Y cyntaf llai’r ail: %1 ar y dechrau, %2 ar y diwedd, %3 lle’r oeddent bellaf oddi wrth ei gilydd (ar ôl %4).</translation>
    </message>
    <message>
        <source>Their steps allow %1: the two gauges agree.</source>
        <translation>Mae eu camau’n caniatáu %1: mae’r ddau fedrydd yn cytuno.</translation>
    </message>
    <message>
        <source>Their steps allow %1: at the beginning and at the end the two gauges agree, in between they do not.</source>
        <translation>Mae eu camau’n caniatáu %1: ar y dechrau ac ar y diwedd mae’r ddau fedrydd yn cytuno, rhyngddynt nid ydynt.</translation>
    </message>
    <message>
        <source>Their steps allow %1: the two gauges do not agree. Find out which of them is right.</source>
        <translation>Mae eu camau’n caniatáu %1: nid yw’r ddau fedrydd yn cytuno. Darganfyddwch pa un ohonynt sy’n gywir.</translation>
    </message>
    <message>
        <source>Watched beside it: %1, %2 readings.</source>
        <translation>Wedi’i wylio wrth ei ochr: %1, %2 o ddarlleniadau.</translation>
    </message>
    <message>
        <source>The two can&apos;t be compared: of one no step is known, or they never read at the same time.</source>
        <translation>Ni ellir cymharu’r ddau: nid yw cam un ohonynt yn hysbys, neu ni ddarllenasant erioed ar yr un pryd.</translation>
    </message>
    <message>
        <source>The second gauge: %1</source>
        <translation>Yr ail fedrydd: %1</translation>
    </message>
    <message>
        <source>Where nothing is said of how far a volume may be off, it is taken as exact.</source>
        <translation>Lle na ddywedir dim am ba mor anghywir y gall cyfaint fod, cymerir ei fod yn fanwl gywir.</translation>
    </message>
    <message>
        <source>How far the volume may be off</source>
        <translation>Pa mor anghywir y gall y cyfaint fod</translation>
    </message>
    <message>
        <source>The gauge was silent for %1 in all; nothing is put in the place of what was not read.</source>
        <translation>Bu’r medrydd yn fud am %1 i gyd; ni roddir dim yn lle’r hyn na ddarllenwyd.</translation>
    </message>
    <message>
        <source>%1: %2 readings over %3, one step %4</source>
        <translation>%1: %2 o ddarlleniadau dros %3, un cam %4</translation>
    </message>
    <message>
        <source>%1: %2 readings over %3</source>
        <translation>%1: %2 o ddarlleniadau dros %3</translation>
    </message>
    <message>
        <source>SIMULATION, for practice: %1</source>
        <translation>EFELYCHIAD, ar gyfer ymarfer: %1</translation>
    </message>
    <message>
        <source>The verdict is by the standard&apos;s rule of the readings at start and end; the trace is evidence beside it.</source>
        <translation>Mae’r dyfarniad yn ôl rheol y safon ar y darlleniadau ar y dechrau a’r diwedd; tystiolaeth wrth ei ochr yw’r olrhain.</translation>
    </message>
    <message>
        <source>let-by begins</source>
        <translation>gollwng heibio’n dechrau</translation>
    </message>
    <message>
        <source>settling begins</source>
        <translation>sefydlogi’n dechrau</translation>
    </message>
    <message>
        <source>timing begins</source>
        <translation>amseru’n dechrau</translation>
    </message>
    <message>
        <source>test ends</source>
        <translation>y prawf yn gorffen</translation>
    </message>
    <message>
        <source>valve shut</source>
        <translation>falf ar gau</translation>
    </message>
    <message>
        <source>pump removed</source>
        <translation>pwmp wedi’i dynnu</translation>
    </message>
    <message>
        <source>door opened</source>
        <translation>drws wedi’i agor</translation>
    </message>
    <message>
        <source>seconds since the trace began</source>
        <translation>eiliadau ers dechrau’r olrhain</translation>
    </message>
    <message>
        <source>The whole trace</source>
        <translation>Yr olrhain cyfan</translation>
    </message>
    <message>
        <source>fitted: leak and settling together</source>
        <translation>wedi’i ffitio: gollyngiad a sefydlogi gyda’i gilydd</translation>
    </message>
    <message>
        <source>The timed minutes</source>
        <translation>Y munudau a amserwyd</translation>
    </message>
    <message>
        <source>read by the gauge</source>
        <translation>darllenwyd gan y medrydd</translation>
    </message>
    <message>
        <source>What the gauge saw</source>
        <translation>Yr hyn a welodd y medrydd</translation>
    </message>
    <message>
        <source>It moved by %1 in %2 of let-by.</source>
        <translation>Symudodd o %1 mewn %2 o ollwng heibio.</translation>
    </message>
    <message>
        <source>Data badge</source>
        <translation>Bathodyn data</translation>
    </message>
    <message>
        <source>Serial, pitch, berth or hull number</source>
        <translation>Rhif cyfresol, llain, angorfa neu gorff</translation>
    </message>
    <message>
        <source>Used</source>
        <translation>Defnydd</translation>
    </message>
    <message>
        <source>Cylinders: type and size</source>
        <translation>Silindrau: math a maint</translation>
    </message>
    <message>
        <source>Where the cylinders stand</source>
        <translation>Lle saif y silindrau</translation>
    </message>
    <message>
        <source>Cylinders upright and secured</source>
        <translation>Silindrau’n unionsyth ac wedi’u sicrhau</translation>
    </message>
    <message>
        <source>Regulator: type</source>
        <translation>Rheolydd: math</translation>
    </message>
    <message>
        <source>Regulator: date on it</source>
        <translation>Rheolydd: y dyddiad arno</translation>
    </message>
    <message>
        <source>Hoses: dates on them</source>
        <translation>Pibellau hyblyg: y dyddiadau arnynt</translation>
    </message>
    <message>
        <source>Over-pressure and under-pressure shut-off</source>
        <translation>Diffodd gorbwysedd a thanbwysedd</translation>
    </message>
    <message>
        <source>Lock-up pressure</source>
        <translation>Pwysedd cloi</translation>
    </message>
    <message>
        <source>Bubble tester</source>
        <translation>Profwr swigod</translation>
    </message>
    <message>
        <source>Fixed ventilation, high and low</source>
        <translation>Awyru sefydlog, uchel ac isel</translation>
    </message>
    <message>
        <source>Fixed vents, high</source>
        <translation>Awyrellau sefydlog, uchel</translation>
    </message>
    <message>
        <source>Fixed vents, low</source>
        <translation>Awyrellau sefydlog, isel</translation>
    </message>
    <message>
        <source>Drain and bilge openings</source>
        <translation>Agoriadau draenio a gwaelod y cwch</translation>
    </message>
    <message>
        <source>Interlock of extract and gas</source>
        <translation>Cyd-glo’r echdynnu a’r nwy</translation>
    </message>
    <message>
        <source>Interlock proved by a test</source>
        <translation>Profwyd y cyd-glo drwy brawf</translation>
    </message>
    <message>
        <source>Emergency shut-off</source>
        <translation>Diffodd mewn argyfwng</translation>
    </message>
    <message>
        <source>Gas proving</source>
        <translation>Profi’r nwy</translation>
    </message>
    <message>
        <source>Canopy and fan</source>
        <translation>Canopi a ffan</translation>
    </message>
    <message>
        <source>Make-up air</source>
        <translation>Aer cyflenwi</translation>
    </message>
    <message>
        <source>Where the kitchen&apos;s air was read</source>
        <translation>Lle darllenwyd aer y gegin</translation>
    </message>
    <message>
        <source>CO₂ in the kitchen, at the start</source>
        <translation>CO₂ yn y gegin, ar y dechrau</translation>
    </message>
    <message>
        <source>CO₂ in the kitchen, at the end</source>
        <translation>CO₂ yn y gegin, ar y diwedd</translation>
    </message>
    <message>
        <source>CO in the kitchen</source>
        <translation>CO yn y gegin</translation>
    </message>
    <message>
        <source>Capacity</source>
        <translation>Cynhwysedd</translation>
    </message>
    <message>
        <source>Expansion vessel or space</source>
        <translation>Llestr neu ofod ehangu</translation>
    </message>
    <message>
        <source>Temperature and pressure relief valve</source>
        <translation>Falf lleddfu tymheredd a phwysedd</translation>
    </message>
    <message>
        <source>Pressure reducing and expansion valves</source>
        <translation>Falfiau gostwng pwysedd ac ehangu</translation>
    </message>
    <message>
        <source>Discharge pipe D1</source>
        <translation>Pibell ollwng D1</translation>
    </message>
    <message>
        <source>Discharge pipe D2</source>
        <translation>Pibell ollwng D2</translation>
    </message>
    <message>
        <source>Number of the competence for it</source>
        <translation>Rhif y cymhwysedd ar ei gyfer</translation>
    </message>
    <message>
        <source>How it is sealed</source>
        <translation>Sut y’i seliwyd</translation>
    </message>
    <message>
        <source>Where it is sealed</source>
        <translation>Lle y’i seliwyd</translation>
    </message>
    <message>
        <source>Seal proved free of leaks</source>
        <translation>Profwyd nad yw’r sêl yn gollwng</translation>
    </message>
    <message>
        <source>Label on it that says so</source>
        <translation>Label arno sy’n dweud hynny</translation>
    </message>
    <message>
        <source>leisure vehicle, its LPG system</source>
        <translation>cerbyd hamdden, ei system LPG</translation>
    </message>
    <message>
        <source>boat, its LPG system</source>
        <translation>cwch, ei system LPG</translation>
    </message>
    <message>
        <source>catering appliance</source>
        <translation>cyfarpar arlwyo</translation>
    </message>
    <message>
        <source>unvented cylinder, noted only</source>
        <translation>silindr heb awyrell, nodwyd yn unig</translation>
    </message>
    <message>
        <source>decommissioned and capped</source>
        <translation>wedi’i ddatgomisiynu a’i gapio</translation>
    </message>
    <message>
        <source>let</source>
        <translation>ar osod</translation>
    </message>
    <message>
        <source>privately</source>
        <translation>yn breifat</translation>
    </message>
    <message>
        <source>no bubbles</source>
        <translation>dim swigod</translation>
    </message>
    <message>
        <source>bubbles: it leaks</source>
        <translation>swigod: mae’n gollwng</translation>
    </message>
    <message>
        <source>by air flow</source>
        <translation>drwy lif aer</translation>
    </message>
    <message>
        <source>by air pressure</source>
        <translation>drwy bwysedd aer</translation>
    </message>
    <message>
        <source>by CO₂</source>
        <translation>drwy CO₂</translation>
    </message>
    <message>
        <source>with an appropriate fitting</source>
        <translation>â ffitiad priodol</translation>
    </message>
    <message>
        <source>shut at a valve only</source>
        <translation>wedi’i gau wrth falf yn unig</translation>
    </message>
    <message>
        <source>could not be seen</source>
        <translation>ni ellid ei weld</translation>
    </message>
    <message>
        <source>Decommissioned and capped</source>
        <translation>Wedi’i ddatgomisiynu a’i gapio</translation>
    </message>
    <message>
        <source>The LPG system</source>
        <translation>Y system LPG</translation>
    </message>
    <message>
        <source>The kitchen</source>
        <translation>Y gegin</translation>
    </message>
    <message>
        <source>Further</source>
        <translation>Ymhellach</translation>
    </message>
    <message>
        <source>Unvented cylinder: noted only, no judgement of the gas work</source>
        <translation>Silindr heb awyrell: nodwyd yn unig, dim barn ar y gwaith nwy</translation>
    </message>
    <message>
        <source>noted only</source>
        <translation>nodwyd yn unig</translation>
    </message>
    <message>
        <source>Decommissioned and capped: it cannot be used, and nothing was measured of it.</source>
        <translation>Wedi’i ddatgomisiynu a’i gapio: ni ellir ei ddefnyddio, ac ni fesurwyd dim arno.</translation>
    </message>
    <message>
        <source>Pipes shut off</source>
        <translation>Pibellau wedi’u cau</translation>
    </message>
    <message>
        <source>the meter and its joints</source>
        <translation>y mesurydd a’i uniadau</translation>
    </message>
    <message>
        <source>pipe %1</source>
        <translation>pibell %1</translation>
    </message>
    <message>
        <source>what is connected at pipe %1</source>
        <translation>yr hyn sydd wedi’i gysylltu wrth bibell %1</translation>
    </message>
    <message>
        <source>the appliances</source>
        <translation>y cyfarpar</translation>
    </message>
    <message>
        <source>%1, repeated with appliances isolated</source>
        <translation>%1, wedi’i ailadrodd gyda’r cyfarpar wedi’u hynysu</translation>
    </message>
    <message>
        <source>appliances</source>
        <translation>cyfarpar</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 i %3)</translation>
    </message>
    <message>
        <source>not compared: say whether appliances were connected</source>
        <translation>heb ei gymharu: nodwch a oedd y cyfarpar wedi’u cysylltu</translation>
    </message>
    <message>
        <source>not compared: the list has no pipe “%1”</source>
        <translation>heb ei gymharu: nid oes pibell “%1” yn y rhestr</translation>
    </message>
    <message>
        <source>not compared: say in the pipe list what each pipe follows</source>
        <translation>heb ei gymharu: nodwch yn y rhestr pibellau beth mae pob pibell yn ei ddilyn</translation>
    </message>
    <message>
        <source>not compared: the volume is not known</source>
        <translation>heb ei gymharu: nid yw’r cyfaint yn hysbys</translation>
    </message>
    <message>
        <source>not compared: readings or times are missing</source>
        <translation>heb ei gymharu: mae darlleniadau neu amseroedd ar goll</translation>
    </message>
    <message>
        <source>not compared: no gauge is chosen</source>
        <translation>heb ei gymharu: nid oes mesurydd pwysedd wedi’i ddewis</translation>
    </message>
    <message>
        <source>Looking for the leak: the tests compared</source>
        <translation>Chwilio am y gollyngiad: cymharu’r profion</translation>
    </message>
    <message>
        <source>Shut off</source>
        <translation>Wedi’i gau</translation>
    </message>
    <message>
        <source>Volume reached</source>
        <translation>Cyfaint a gyrhaeddwyd</translation>
    </message>
    <message>
        <source>Leak, and its 95 % interval</source>
        <translation>Gollyngiad, a’i gyfwng 95 %</translation>
    </message>
    <message>
        <source>%1, by its trace</source>
        <translation>%1, yn ôl ei olrhain</translation>
    </message>
    <message>
        <source>Nothing to compare yet: test again with one branch shut off, and say which.</source>
        <translation>Dim i’w gymharu eto: profwch eto gydag un gangen wedi’i chau, a nodwch pa un.</translation>
    </message>
    <message>
        <source>The tests do not agree: no leaks together make such readings. The gas warmed or cooled, a valve let by, or something else was changed between them. Test again.</source>
        <translation>Nid yw’r profion yn cytuno: nid oes gollyngiadau a roddai ddarlleniadau o’r fath gyda’i gilydd. Cynhesodd neu oerodd y nwy, gollyngodd falf heibio, neu newidiwyd rhywbeth arall rhyngddynt. Profwch eto.</translation>
    </message>
    <message>
        <source>There must be a leak here: %1.</source>
        <translation>Rhaid bod gollyngiad yma: %1.</translation>
    </message>
    <message>
        <source>More than one place leaks: %1.</source>
        <translation>Mae mwy nag un lle yn gollwng: %1.</translation>
    </message>
    <message>
        <source>Something leaks, and these tests do not tell where. Shut off one branch more and test again, longer or with a finer gauge.</source>
        <translation>Mae rhywbeth yn gollwng, ac nid yw’r profion hyn yn dweud ble. Caewch un gangen arall a phrofwch eto, am fwy o amser neu â mesurydd manylach.</translation>
    </message>
    <message>
        <source>None of these tests shows a leak. That is not to say that there is none.</source>
        <translation>Nid oes yr un o’r profion hyn yn dangos gollyngiad. Nid yw hynny’n dweud nad oes un.</translation>
    </message>
    <message>
        <source>%1: %2 to %3</source>
        <translation>%1: %2 i %3</translation>
    </message>
    <message>
        <source>%1: no leak shown, %2 at most</source>
        <translation>%1: dim gollyngiad wedi’i ddangos, %2 ar y mwyaf</translation>
    </message>
    <message>
        <source>This helps the search. The verdict is by the standard&apos;s rule of each test&apos;s readings, and what no test shows to leak is not thereby tight.</source>
        <translation>Cymorth i’r chwilio yw hyn. Yn ôl rheol y safon ar ddarlleniadau pob prawf y mae’r dyfarniad, ac nid yw’r hyn nad oes prawf yn dangos ei fod yn gollwng yn dynn o’r herwydd.</translation>
    </message>
    <message>
        <source>not compared: something was changed in between</source>
        <translation>heb ei gymharu: newidiwyd rhywbeth yn y cyfamser</translation>
    </message>
    <message>
        <source>Checked: record %1</source>
        <translation>Archwiliwyd: cofnod %1</translation>
    </message>
    <message>
        <source>Checked, by an earlier record</source>
        <translation>Archwiliwyd, yn ôl cofnod cynharach</translation>
    </message>
    <message>
        <source>Record %1 issued</source>
        <translation>Cyhoeddwyd cofnod %1</translation>
    </message>
    <message>
        <source>Record %1 declared void</source>
        <translation>Datganwyd cofnod %1 yn ddi-rym</translation>
    </message>
    <message>
        <source>Record %1 sent</source>
        <translation>Anfonwyd cofnod %1</translation>
    </message>
    <message>
        <source>Visit</source>
        <translation>Ymweliad</translation>
    </message>
    <message>
        <source>Letter sent</source>
        <translation>Anfonwyd llythyr</translation>
    </message>
    <message>
        <source>Copy of the record handed over</source>
        <translation>Rhoddwyd copi o’r cofnod</translation>
    </message>
    <message>
        <source>Operating information handed over</source>
        <translation>Rhoddwyd gwybodaeth am weithredu</translation>
    </message>
    <message>
        <source>Telephone call</source>
        <translation>Galwad ffôn</translation>
    </message>
    <message>
        <source>A day was proposed</source>
        <translation>Cynigiwyd diwrnod</translation>
    </message>
    <message>
        <source>Booked</source>
        <translation>Trefnwyd</translation>
    </message>
    <message>
        <source>Booked, and done</source>
        <translation>Trefnwyd, a gwnaed</translation>
    </message>
    <message>
        <source>Booking cancelled</source>
        <translation>Canslwyd y trefniant</translation>
    </message>
    <message>
        <source>Booked, and no access</source>
        <translation>Trefnwyd, a dim mynediad</translation>
    </message>
    <message>
        <source>Unsafe situation, a step</source>
        <translation>Sefyllfa anniogel, cam</translation>
    </message>
    <message>
        <source>The window opens</source>
        <translation>Mae’r cyfnod yn agor</translation>
    </message>
    <message>
        <source>Deadline of the next check</source>
        <translation>Dyddiad cau’r archwiliad nesaf</translation>
    </message>
    <message>
        <source>in person</source>
        <translation>wyneb yn wyneb</translation>
    </message>
    <message>
        <source>by letter</source>
        <translation>trwy lythyr</translation>
    </message>
    <message>
        <source>by telephone</source>
        <translation>dros y ffôn</translation>
    </message>
    <message>
        <source>by text message</source>
        <translation>trwy neges destun</translation>
    </message>
    <message>
        <source>another way</source>
        <translation>ffordd arall</translation>
    </message>
    <message>
        <source>Try again and tell the landlord</source>
        <translation>Rhowch gynnig arall a dywedwch wrth y landlord</translation>
    </message>
    <message>
        <source>Ask for the last check</source>
        <translation>Gofynnwch am yr archwiliad diwethaf</translation>
    </message>
    <message>
        <source>Tell the landlord</source>
        <translation>Dywedwch wrth y landlord</translation>
    </message>
    <message>
        <source>Book the check</source>
        <translation>Trefnwch yr archwiliad</translation>
    </message>
    <message>
        <source>Ring and book now</source>
        <translation>Ffoniwch a threfnwch nawr</translation>
    </message>
    <message>
        <source>Attend</source>
        <translation>Ewch yno</translation>
    </message>
    <message>
        <source>Nothing to do yet</source>
        <translation>Dim i’w wneud eto</translation>
    </message>
    <message>
        <source>What was done for the gas safety check</source>
        <translation>Yr hyn a wnaed ar gyfer yr archwiliad diogelwch nwy</translation>
    </message>
    <message>
        <source>Deadline of the next</source>
        <translation>Dyddiad cau’r nesaf</translation>
    </message>
    <message>
        <source>Letters and calls since the last check</source>
        <translation>Llythyrau a galwadau ers yr archwiliad diwethaf</translation>
    </message>
    <message>
        <source>Attempts without access since the last check</source>
        <translation>Ymdrechion heb fynediad ers yr archwiliad diwethaf</translation>
    </message>
    <message>
        <source>look again: perhaps only by %1</source>
        <translation>edrychwch eto: efallai dim ond erbyn %1</translation>
    </message>
    <message>
        <source>What comes next</source>
        <translation>Beth sydd nesaf</translation>
    </message>
    <message>
        <source>What this is worth</source>
        <translation>Gwerth hyn</translation>
    </message>
    <message>
        <source>At least three attempts are what inspectors look for. They are no safe harbour: a court decides on the facts.</source>
        <translation>O leiaf tair ymdrech y mae arolygwyr yn chwilio amdanynt. Nid ydynt yn hafan ddiogel: llys sy’n penderfynu ar y ffeithiau.</translation>
    </message>
    <message>
        <source>A landlord has to show that all reasonable steps were taken. Keep every letter. Nobody may use force to get in.</source>
        <translation>Rhaid i landlord ddangos y cymerwyd pob cam rhesymol. Cadwch bob llythyr. Ni chaiff neb ddefnyddio grym i fynd i mewn.</translation>
    </message>
    <message>
        <source>Source: HSE, “How far do I need to go if the tenant prevents access for a gas safety check?”</source>
        <translation>Ffynhonnell: HSE, “How far do I need to go if the tenant prevents access for a gas safety check?”</translation>
    </message>
    <message>
        <source>However many attempts were made, the next step stays: try again and tell the landlord.</source>
        <translation>Faint bynnag o ymdrechion a wnaed, yr un yw’r cam nesaf: rhowch gynnig arall a dywedwch wrth y landlord.</translation>
    </message>
    <message>
        <source>What was done, in order of time</source>
        <translation>Yr hyn a wnaed, yn nhrefn amser</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Diwrnod</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Amser</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Beth</translation>
    </message>
    <message>
        <source>By whom, how, and what came of it</source>
        <translation>Gan bwy, sut, a beth ddaeth ohono</translation>
    </message>
    <message>
        <source>%1 (to come)</source>
        <translation>%1 (i ddod)</translation>
    </message>
    <message>
        <source>%1, %2 at %3</source>
        <translation>%1, %2 am %3</translation>
    </message>
    <message>
        <source>%1, to %2</source>
        <translation>%1, at %2</translation>
    </message>
    <message>
        <source>left: %1</source>
        <translation>gadawyd: %1</translation>
    </message>
    <message>
        <source>answer: %1</source>
        <translation>ateb: %1</translation>
    </message>
    <message>
        <source>came of it: %1</source>
        <translation>canlyniad: %1</translation>
    </message>
    <message>
        <source>next: %1</source>
        <translation>nesaf: %1</translation>
    </message>
    <message>
        <source>on %1</source>
        <translation>ar %1</translation>
    </message>
    <message>
        <source>word for word below</source>
        <translation>air am air isod</translation>
    </message>
    <message>
        <source>photograph below</source>
        <translation>ffotograff isod</translation>
    </message>
    <message>
        <source>No. %1, word for word: %2</source>
        <translation>Rhif %1, air am air: %2</translation>
    </message>
    <message>
        <source>No. %1: %2</source>
        <translation>Rhif %1: %2</translation>
    </message>
</context>
</TS>
