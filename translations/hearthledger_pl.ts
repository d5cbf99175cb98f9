<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="pl" sourcelanguage="en">
<context>
    <name>Words</name>
    <message>
        <source>overdue</source>
        <translation>po terminie</translation>
    </message>
    <message>
        <source>overdue, booked</source>
        <translation>po terminie, umówiono</translation>
    </message>
    <message>
        <source>overdue, of them booked</source>
        <translation>po terminie, z nich umówiono</translation>
    </message>
    <message>
        <source>last two weeks</source>
        <translation>ostatnie dwa tygodnie</translation>
    </message>
    <message>
        <source>window open</source>
        <translation>okres otwarty</translation>
    </message>
    <message>
        <source>booked</source>
        <translation>umówiono</translation>
    </message>
    <message>
        <source>opening soon</source>
        <translation>wkrótce się otwiera</translation>
    </message>
    <message>
        <source>later</source>
        <translation>później</translation>
    </message>
    <message>
        <source>no check known</source>
        <translation>kontrola nieznana</translation>
    </message>
    <message>
        <source>no check asked for</source>
        <translation>kontrola niewymagana</translation>
    </message>
    <message>
        <source>%1 (at the latest %2: by the reading of the law)</source>
        <translation>%1 (najpóźniej %2: zależnie od odczytania prawa)</translation>
    </message>
    <message>
        <source>How many stand where</source>
        <translation>Ile w jakim stanie</translation>
    </message>
    <message>
        <source>Premises</source>
        <translation>Obiekt</translation>
    </message>
    <message>
        <source>Address</source>
        <translation>Adres</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stan</translation>
    </message>
    <message>
        <source>Last check</source>
        <translation>Ostatnia kontrola</translation>
    </message>
    <message>
        <source>Due by</source>
        <translation>Termin do</translation>
    </message>
    <message>
        <source>Booked for</source>
        <translation>Umówiono na</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Protokół</translation>
    </message>
    <message>
        <source>Letters</source>
        <translation>Pisma</translation>
    </message>
    <message>
        <source>Gas safety checks: summary</source>
        <translation>Kontrole bezpieczeństwa gazowego: zestawienie</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>strona %1 z %2</translation>
    </message>
    <message>
        <source>Demonstration: not a real record</source>
        <translation>Pokaz: to nie jest prawdziwy protokół</translation>
    </message>
    <message>
        <source>A list of what our records say on the day above; the records themselves count.</source>
        <translation>Wykaz tego, co mówią nasze protokoły w podanym wyżej dniu; liczą się same protokoły.</translation>
    </message>
    <message>
        <source>meter not said</source>
        <translation>nie podano gazomierza</translation>
    </message>
    <message>
        <source>goes on in the list below</source>
        <translation>ciąg dalszy w wykazie poniżej</translation>
    </message>
    <message>
        <source>after %1</source>
        <translation>za %1</translation>
    </message>
    <message>
        <source>capped</source>
        <translation>zaślepiony</translation>
    </message>
    <message>
        <source>appliance taken away</source>
        <translation>urządzenie usunięto</translation>
    </message>
    <message>
        <source>appliance, kind not entered</source>
        <translation>urządzenie, nie podano rodzaju</translation>
    </message>
    <message>
        <source>drop not known</source>
        <translation>spadek nieznany</translation>
    </message>
    <message>
        <source>at least %1 lost at full load, fittings not said</source>
        <translation>co najmniej %1 straty przy pełnym obciążeniu, nie podano kształtek</translation>
    </message>
    <message>
        <source>%1 lost at full load</source>
        <translation>%1 straty przy pełnym obciążeniu</translation>
    </message>
    <message>
        <source>the most</source>
        <translation>najwięcej</translation>
    </message>
    <message>
        <source>at least %1 lost as timed</source>
        <translation>co najmniej %1 straty przy zmierzonym przepływie</translation>
    </message>
    <message>
        <source>%1 lost as timed</source>
        <translation>%1 straty przy zmierzonym przepływie</translation>
    </message>
    <message>
        <source>Dashed: not under test.</source>
        <translation>Linia przerywana: niebadane.</translation>
    </message>
    <message>
        <source>What is lost is worked out from sizes, lengths, fittings and flows by the law for smooth pipe; it was not measured. The limit stands with the findings.</source>
        <translation>Strata jest obliczona ze średnic, długości, kształtek i przepływów według wzoru dla gładkiej rury; nie była mierzona. Granica jest podana przy ustaleniach.</translation>
    </message>
    <message>
        <source>Ratio CO/CO₂</source>
        <translation>Stosunek CO/CO₂</translation>
    </message>
    <message>
        <source>worked out</source>
        <translation>obliczone</translation>
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
        <translation>największa moc</translation>
    </message>
    <message>
        <source>lowest rate</source>
        <translation>najmniejsza moc</translation>
    </message>
    <message>
        <source>as left</source>
        <translation>po pozostawieniu</translation>
    </message>
    <message>
        <source>before it was adjusted</source>
        <translation>przed regulacją</translation>
    </message>
    <message>
        <source>Let-by</source>
        <translation>Przepuszczanie zaworu</translation>
    </message>
    <message>
        <source>Tightness</source>
        <translation>Szczelność</translation>
    </message>
    <message>
        <source>Retest, appliances isolated</source>
        <translation>Ponowne badanie, urządzenia odcięte</translation>
    </message>
    <message>
        <source>pressure, mbar</source>
        <translation>ciśnienie, mbar</translation>
    </message>
    <message>
        <source>start</source>
        <translation>początek</translation>
    </message>
    <message>
        <source>end</source>
        <translation>koniec</translation>
    </message>
    <message>
        <source>read; the bar is the uncertainty of the change, ±%1</source>
        <translation>odczyt; słupek to niepewność zmiany, ±%1</translation>
    </message>
    <message>
        <source>Carbon monoxide as it was watched</source>
        <translation>Tlenek węgla w trakcie obserwacji</translation>
    </message>
    <message>
        <source>minutes since the watch began</source>
        <translation>minuty od początku obserwacji</translation>
    </message>
    <message>
        <source>%1: %2 readings over %3, the highest %4.</source>
        <translation>%1: odczytów %2 przez %3, najwyższy %4.</translation>
    </message>
    <message>
        <source>What was watched decides nothing: the findings rest on the readings in the series.</source>
        <translation>To, co zaobserwowano, o niczym nie rozstrzyga: ustalenia opierają się na odczytach z serii.</translation>
    </message>
    <message>
        <source>Carbon monoxide over time</source>
        <translation>Tlenek węgla w czasie</translation>
    </message>
    <message>
        <source>minutes since the first reading</source>
        <translation>minuty od pierwszego odczytu</translation>
    </message>
    <message>
        <source>%1 January %2</source>
        <translation>%1 stycznia %2</translation>
    </message>
    <message>
        <source>%1 February %2</source>
        <translation>%1 lutego %2</translation>
    </message>
    <message>
        <source>%1 March %2</source>
        <translation>%1 marca %2</translation>
    </message>
    <message>
        <source>%1 April %2</source>
        <translation>%1 kwietnia %2</translation>
    </message>
    <message>
        <source>%1 May %2</source>
        <translation>%1 maja %2</translation>
    </message>
    <message>
        <source>%1 June %2</source>
        <translation>%1 czerwca %2</translation>
    </message>
    <message>
        <source>%1 July %2</source>
        <translation>%1 lipca %2</translation>
    </message>
    <message>
        <source>%1 August %2</source>
        <translation>%1 sierpnia %2</translation>
    </message>
    <message>
        <source>%1 September %2</source>
        <translation>%1 września %2</translation>
    </message>
    <message>
        <source>%1 October %2</source>
        <translation>%1 października %2</translation>
    </message>
    <message>
        <source>%1 November %2</source>
        <translation>%1 listopada %2</translation>
    </message>
    <message>
        <source>%1 December %2</source>
        <translation>%1 grudnia %2</translation>
    </message>
    <message>
        <source>%1 Jan %2</source>
        <translation>%1 sty %2</translation>
    </message>
    <message>
        <source>%1 Feb %2</source>
        <translation>%1 lut %2</translation>
    </message>
    <message>
        <source>%1 Mar %2</source>
        <translation>%1 mar %2</translation>
    </message>
    <message>
        <source>%1 Apr %2</source>
        <translation>%1 kwi %2</translation>
    </message>
    <message>
        <source>%1 Jun %2</source>
        <translation>%1 cze %2</translation>
    </message>
    <message>
        <source>%1 Jul %2</source>
        <translation>%1 lip %2</translation>
    </message>
    <message>
        <source>%1 Aug %2</source>
        <translation>%1 sie %2</translation>
    </message>
    <message>
        <source>%1 Sep %2</source>
        <translation>%1 wrz %2</translation>
    </message>
    <message>
        <source>%1 Oct %2</source>
        <translation>%1 paź %2</translation>
    </message>
    <message>
        <source>%1 Nov %2</source>
        <translation>%1 lis %2</translation>
    </message>
    <message>
        <source>%1 Dec %2</source>
        <translation>%1 gru %2</translation>
    </message>
    <message>
        <source>pass</source>
        <translation>spełnia</translation>
    </message>
    <message>
        <source>fail</source>
        <translation>nie spełnia</translation>
    </message>
    <message>
        <source>look again</source>
        <translation>sprawdzić ponownie</translation>
    </message>
    <message>
        <source>no verdict</source>
        <translation>bez orzeczenia</translation>
    </message>
    <message>
        <source>Natural gas</source>
        <translation>Gaz ziemny</translation>
    </message>
    <message>
        <source>Propane (LPG)</source>
        <translation>Propan (LPG)</translation>
    </message>
    <message>
        <source>Butane (LPG)</source>
        <translation>Butan (LPG)</translation>
    </message>
    <message>
        <source>LPG/air mixture</source>
        <translation>Mieszanina LPG z powietrzem</translation>
    </message>
    <message>
        <source>trade table</source>
        <translation>tabela branżowa</translation>
    </message>
    <message>
        <source>from the tube&apos;s dimensions</source>
        <translation>z wymiarów rury</translation>
    </message>
    <message>
        <source>typed in</source>
        <translation>wpisano</translation>
    </message>
    <message>
        <source>Customer</source>
        <translation>Klient</translation>
    </message>
    <message>
        <source>Landlord</source>
        <translation>Wynajmujący</translation>
    </message>
    <message>
        <source>Agent</source>
        <translation>Agent</translation>
    </message>
    <message>
        <source>Home owner</source>
        <translation>Właściciel domu</translation>
    </message>
    <message>
        <source>Tenant</source>
        <translation>Najemca</translation>
    </message>
    <message>
        <source>Responsible person</source>
        <translation>Osoba odpowiedzialna</translation>
    </message>
    <message>
        <source>England</source>
        <translation>Anglia</translation>
    </message>
    <message>
        <source>Wales</source>
        <translation>Walia</translation>
    </message>
    <message>
        <source>Scotland</source>
        <translation>Szkocja</translation>
    </message>
    <message>
        <source>Northern Ireland</source>
        <translation>Irlandia Północna</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Osoba</translation>
    </message>
    <message>
        <source>Organisation</source>
        <translation>Organizacja</translation>
    </message>
    <message>
        <source>Electronic pressure gauge</source>
        <translation>Manometr elektroniczny</translation>
    </message>
    <message>
        <source>Water gauge (U-tube)</source>
        <translation>Manometr wodny (U-rurka)</translation>
    </message>
    <message>
        <source>Flue gas analyser</source>
        <translation>Analizator spalin</translation>
    </message>
    <message>
        <source>Gas leak detector</source>
        <translation>Wykrywacz nieszczelności gazu</translation>
    </message>
    <message>
        <source>No-contact voltage detector</source>
        <translation>Bezdotykowy wskaźnik napięcia</translation>
    </message>
    <message>
        <source>Other instrument</source>
        <translation>Inny przyrząd</translation>
    </message>
    <message>
        <source>Copper</source>
        <translation>Miedź</translation>
    </message>
    <message>
        <source>Steel, medium</source>
        <translation>Stal, średnia</translation>
    </message>
    <message>
        <source>Steel, heavy</source>
        <translation>Stal, ciężka</translation>
    </message>
    <message>
        <source>Polyethylene SDR 11</source>
        <translation>Polietylen SDR 11</translation>
    </message>
    <message>
        <source>Polyethylene SDR 17.6</source>
        <translation>Polietylen SDR 17.6</translation>
    </message>
    <message>
        <source>Corrugated</source>
        <translation>Rura karbowana</translation>
    </message>
    <message>
        <source>Firm&apos;s name</source>
        <translation>Nazwa firmy</translation>
    </message>
    <message>
        <source>Firm&apos;s address</source>
        <translation>Adres firmy</translation>
    </message>
    <message>
        <source>Firm&apos;s registration number</source>
        <translation>Numer rejestracyjny firmy</translation>
    </message>
    <message>
        <source>Address of the premises</source>
        <translation>Adres obiektu</translation>
    </message>
    <message>
        <source>Postcode of the premises</source>
        <translation>Kod pocztowy obiektu</translation>
    </message>
    <message>
        <source>Name of the customer, owner or agent</source>
        <translation>Nazwisko klienta, właściciela lub agenta</translation>
    </message>
    <message>
        <source>Engineer</source>
        <translation>Inżynier</translation>
    </message>
    <message>
        <source>Engineer&apos;s card number</source>
        <translation>Numer karty inżyniera</translation>
    </message>
    <message>
        <source>Gas</source>
        <translation>Gaz</translation>
    </message>
    <message>
        <source>Meter</source>
        <translation>Gazomierz</translation>
    </message>
    <message>
        <source>Gauge&apos;s serial number</source>
        <translation>Numer seryjny manometru</translation>
    </message>
    <message>
        <source>Gauge&apos;s calibration date</source>
        <translation>Data wzorcowania manometru</translation>
    </message>
    <message>
        <source>Pipes with size and length, or the volume</source>
        <translation>Rury ze średnicą i długością albo objętość</translation>
    </message>
    <message>
        <source>What a pipe goes on from</source>
        <translation>Od czego odchodzi rura</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Data</translation>
    </message>
    <message>
        <source>Name of the landlord or agent</source>
        <translation>Nazwisko wynajmującego lub agenta</translation>
    </message>
    <message>
        <source>Address of the landlord or agent</source>
        <translation>Adres wynajmującego lub agenta</translation>
    </message>
    <message>
        <source>Name of the home owner</source>
        <translation>Nazwisko właściciela domu</translation>
    </message>
    <message>
        <source>An appliance that was inspected or looked at</source>
        <translation>Urządzenie skontrolowane lub obejrzane</translation>
    </message>
    <message>
        <source>Kind of the appliance</source>
        <translation>Rodzaj urządzenia</translation>
    </message>
    <message>
        <source>Make of the appliance</source>
        <translation>Marka urządzenia</translation>
    </message>
    <message>
        <source>Model of the appliance</source>
        <translation>Model urządzenia</translation>
    </message>
    <message>
        <source>Serial number of the appliance</source>
        <translation>Numer seryjny urządzenia</translation>
    </message>
    <message>
        <source>Where the appliance is</source>
        <translation>Gdzie jest urządzenie</translation>
    </message>
    <message>
        <source>Kind of flue</source>
        <translation>Rodzaj odprowadzenia spalin</translation>
    </message>
    <message>
        <source>Analyser&apos;s serial number</source>
        <translation>Numer seryjny analizatora</translation>
    </message>
    <message>
        <source>Analyser&apos;s calibration date</source>
        <translation>Data wzorcowania analizatora</translation>
    </message>
    <message>
        <source>A room</source>
        <translation>Pomieszczenie</translation>
    </message>
    <message>
        <source>Immediately dangerous or at risk, as the engineer decides</source>
        <translation>Immediately Dangerous albo At Risk, według decyzji inżyniera</translation>
    </message>
    <message>
        <source>What is wrong</source>
        <translation>Co jest nie w porządku</translation>
    </message>
    <message>
        <source>Where it is</source>
        <translation>Gdzie to jest</translation>
    </message>
    <message>
        <source>Serial numbers of all instruments</source>
        <translation>Numery seryjne wszystkich przyrządów</translation>
    </message>
    <message>
        <source>Calibration dates of all instruments</source>
        <translation>Daty wzorcowania wszystkich przyrządów</translation>
    </message>
    <message>
        <source>Address of whom the letter goes to</source>
        <translation>Adres odbiorcy listu</translation>
    </message>
    <message>
        <source>Gas tightness and purge record</source>
        <translation>Protokół szczelności i odpowietrzenia instalacji gazowej</translation>
    </message>
    <message>
        <source>Landlord&apos;s gas safety record</source>
        <translation>Landlord&apos;s gas safety record (protokół bezpieczeństwa gazowego wynajmującego)</translation>
    </message>
    <message>
        <source>Home owner&apos;s gas safety record</source>
        <translation>Protokół bezpieczeństwa gazowego właściciela domu</translation>
    </message>
    <message>
        <source>Installation and commissioning record</source>
        <translation>Protokół montażu i uruchomienia</translation>
    </message>
    <message>
        <source>Service and maintenance record</source>
        <translation>Protokół przeglądu i konserwacji</translation>
    </message>
    <message>
        <source>Strength, tightness and purge record, larger pipework</source>
        <translation>Protokół wytrzymałości, szczelności i odpowietrzenia, większe instalacje</translation>
    </message>
    <message>
        <source>Warning notice</source>
        <translation>Warning notice (ostrzeżenie)</translation>
    </message>
    <message>
        <source>Report on carbon monoxide or fumes in a room</source>
        <translation>Raport o tlenku węgla lub spalinach w pomieszczeniu</translation>
    </message>
    <message>
        <source>Entry of a reportable gas incident, RIDDOR 11(2)</source>
        <translation>Wpis o zdarzeniu gazowym podlegającym zgłoszeniu, RIDDOR 11(2)</translation>
    </message>
    <message>
        <source>Notification under the building regulations</source>
        <translation>Zgłoszenie na podstawie przepisów budowlanych</translation>
    </message>
    <message>
        <source>Calibration log of the instruments</source>
        <translation>Rejestr wzorcowania przyrządów</translation>
    </message>
    <message>
        <source>Reminder that a check is due</source>
        <translation>Przypomnienie o terminie kontroli</translation>
    </message>
    <message>
        <source>Letter after no access</source>
        <translation>List po braku dostępu</translation>
    </message>
    <message>
        <source>Letter with a record</source>
        <translation>List z protokołem</translation>
    </message>
    <message>
        <source>Corrugated DN %1</source>
        <translation>Rura karbowana DN %1</translation>
    </message>
    <message>
        <source>Corrugated, size not said</source>
        <translation>Rura karbowana, nie podano średnicy</translation>
    </message>
    <message>
        <source>No meter in this part</source>
        <translation>Bez gazomierza w tej części</translation>
    </message>
    <message>
        <source>Another meter</source>
        <translation>Inny gazomierz</translation>
    </message>
    <message>
        <source>%1: typed, but can&apos;t be used</source>
        <translation>%1: wpisano, ale nie da się tego użyć</translation>
    </message>
    <message>
        <source>%1: not entered</source>
        <translation>%1: nie podano</translation>
    </message>
    <message>
        <source>wanted by: %1</source>
        <translation>wymagane przez: %1</translation>
    </message>
    <message>
        <source>Customer&apos;s reference</source>
        <translation>Oznaczenie klienta</translation>
    </message>
    <message>
        <source>Who was there</source>
        <translation>Kto był obecny</translation>
    </message>
    <message>
        <source>Smell of gas on arrival</source>
        <translation>Zapach gazu po przybyciu</translation>
    </message>
    <message>
        <source>Open ends</source>
        <translation>Otwarte końce</translation>
    </message>
    <message>
        <source>Pipe safe to touch</source>
        <translation>Rura bezpieczna w dotyku</translation>
    </message>
    <message>
        <source>Visual inspection</source>
        <translation>Oględziny</translation>
    </message>
    <message>
        <source>What was seen</source>
        <translation>Co zauważono</translation>
    </message>
    <message>
        <source>Tested to</source>
        <translation>Badano według</translation>
    </message>
    <message>
        <source>Pipework tested</source>
        <translation>Badane rury</translation>
    </message>
    <message>
        <source>How much was tested</source>
        <translation>Zakres badania</translation>
    </message>
    <message>
        <source>Which part</source>
        <translation>Która część</translation>
    </message>
    <message>
        <source>Appliances during the test</source>
        <translation>Urządzenia podczas badania</translation>
    </message>
    <message>
        <source>What was open and shut</source>
        <translation>Co było otwarte i zamknięte</translation>
    </message>
    <message>
        <source>Pilot lights</source>
        <translation>Płomyki pilotowe</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>Manometr</translation>
    </message>
    <message>
        <source>Gauge zeroed before connecting</source>
        <translation>Manometr wyzerowany przed podłączeniem</translation>
    </message>
    <message>
        <source>Smell of gas during the test</source>
        <translation>Zapach gazu podczas badania</translation>
    </message>
    <message>
        <source>Volume from elsewhere</source>
        <translation>Objętość z innego źródła</translation>
    </message>
    <message>
        <source>Let-by, start</source>
        <translation>Przepuszczanie zaworu, początek</translation>
    </message>
    <message>
        <source>Let-by, end</source>
        <translation>Przepuszczanie zaworu, koniec</translation>
    </message>
    <message>
        <source>Let-by, from</source>
        <translation>Przepuszczanie zaworu, od</translation>
    </message>
    <message>
        <source>Let-by, to</source>
        <translation>Przepuszczanie zaworu, do</translation>
    </message>
    <message>
        <source>Settling, start</source>
        <translation>Stabilizacja, początek</translation>
    </message>
    <message>
        <source>Settling, end</source>
        <translation>Stabilizacja, koniec</translation>
    </message>
    <message>
        <source>Settling, from</source>
        <translation>Stabilizacja, od</translation>
    </message>
    <message>
        <source>Settling, to</source>
        <translation>Stabilizacja, do</translation>
    </message>
    <message>
        <source>Tightness, start</source>
        <translation>Szczelność, początek</translation>
    </message>
    <message>
        <source>Tightness, end</source>
        <translation>Szczelność, koniec</translation>
    </message>
    <message>
        <source>Tightness, from</source>
        <translation>Szczelność, od</translation>
    </message>
    <message>
        <source>Tightness, to</source>
        <translation>Szczelność, do</translation>
    </message>
    <message>
        <source>Second display, start</source>
        <translation>Drugi wyświetlacz, początek</translation>
    </message>
    <message>
        <source>Second display, end</source>
        <translation>Drugi wyświetlacz, koniec</translation>
    </message>
    <message>
        <source>Why the pressure could not be reached</source>
        <translation>Dlaczego nie osiągnięto ciśnienia</translation>
    </message>
    <message>
        <source>Temperature change assumed</source>
        <translation>Przyjęta zmiana temperatury</translation>
    </message>
    <message>
        <source>Retest, start</source>
        <translation>Ponowne badanie, początek</translation>
    </message>
    <message>
        <source>Retest, end</source>
        <translation>Ponowne badanie, koniec</translation>
    </message>
    <message>
        <source>Retest, from</source>
        <translation>Ponowne badanie, od</translation>
    </message>
    <message>
        <source>Retest, to</source>
        <translation>Ponowne badanie, do</translation>
    </message>
    <message>
        <source>Purged</source>
        <translation>Odpowietrzono</translation>
    </message>
    <message>
        <source>Purged through</source>
        <translation>Odpowietrzono przez</translation>
    </message>
    <message>
        <source>Volume passed at the meter</source>
        <translation>Objętość, która przeszła przez gazomierz</translation>
    </message>
    <message>
        <source>Steady flame at every appliance</source>
        <translation>Stały płomień w każdym urządzeniu</translation>
    </message>
    <message>
        <source>Test point proved with leak detection fluid</source>
        <translation>Króciec pomiarowy sprawdzono płynem do wykrywania nieszczelności</translation>
    </message>
    <message>
        <source>Disturbed joints proved with leak detection fluid</source>
        <translation>Naruszone połączenia sprawdzono płynem do wykrywania nieszczelności</translation>
    </message>
    <message>
        <source>Fluid wiped off</source>
        <translation>Płyn wytarto</translation>
    </message>
    <message>
        <source>Standing pressure at the meter</source>
        <translation>Ciśnienie statyczne przy gazomierzu</translation>
    </message>
    <message>
        <source>Working pressure at the meter</source>
        <translation>Ciśnienie robocze przy gazomierzu</translation>
    </message>
    <message>
        <source>With what burning</source>
        <translation>Przy jakich palnikach</translation>
    </message>
    <message>
        <source>Remarks</source>
        <translation>Uwagi</translation>
    </message>
    <message>
        <source>Signed by the engineer</source>
        <translation>Podpis inżyniera</translation>
    </message>
    <message>
        <source>Received by</source>
        <translation>Odebrał(a)</translation>
    </message>
    <message>
        <source>none disturbed</source>
        <translation>żadnego nie naruszono</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>tak</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nie</translation>
    </message>
    <message>
        <source>not needed</source>
        <translation>niepotrzebne</translation>
    </message>
    <message>
        <source>none seen</source>
        <translation>nie zauważono</translation>
    </message>
    <message>
        <source>found and sealed</source>
        <translation>znaleziono i uszczelniono</translation>
    </message>
    <message>
        <source>found open</source>
        <translation>znaleziono otwarte</translation>
    </message>
    <message>
        <source>not looked for</source>
        <translation>nie szukano</translation>
    </message>
    <message>
        <source>safe</source>
        <translation>bezpieczne</translation>
    </message>
    <message>
        <source>voltage found</source>
        <translation>wykryto napięcie</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>nie wykonano</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>dobry stan</translation>
    </message>
    <message>
        <source>defects noted</source>
        <translation>stwierdzono wady</translation>
    </message>
    <message>
        <source>new</source>
        <translation>nowe</translation>
    </message>
    <message>
        <source>existing</source>
        <translation>istniejące</translation>
    </message>
    <message>
        <source>whole installation</source>
        <translation>cała instalacja</translation>
    </message>
    <message>
        <source>a part</source>
        <translation>część</translation>
    </message>
    <message>
        <source>connected, all off</source>
        <translation>podłączone, wszystkie wyłączone</translation>
    </message>
    <message>
        <source>isolated at their valves</source>
        <translation>odcięte zaworami</translation>
    </message>
    <message>
        <source>none connected</source>
        <translation>żadne nie jest podłączone</translation>
    </message>
    <message>
        <source>out</source>
        <translation>zgaszone</translation>
    </message>
    <message>
        <source>none fitted</source>
        <translation>nie ma ich</translation>
    </message>
    <message>
        <source>left lit</source>
        <translation>pozostawione zapalone</translation>
    </message>
    <message>
        <source>an open burner</source>
        <translation>otwarty palnik</translation>
    </message>
    <message>
        <source>to a ventilated place, no source of ignition</source>
        <translation>do miejsca wentylowanego, bez źródła zapłonu</translation>
    </message>
    <message>
        <source>natural gas</source>
        <translation>gaz ziemny</translation>
    </message>
    <message>
        <source>propane</source>
        <translation>propan</translation>
    </message>
    <message>
        <source>butane</source>
        <translation>butan</translation>
    </message>
    <message>
        <source>LPG-air</source>
        <translation>LPG z powietrzem</translation>
    </message>
    <message>
        <source>usual British mix</source>
        <translation>zwykła mieszanka brytyjska</translation>
    </message>
    <message>
        <source>usual mix, richer in CO₂</source>
        <translation>zwykła mieszanka, bogatsza w CO₂</translation>
    </message>
    <message>
        <source>G20 (methane)</source>
        <translation>G20 (metan)</translation>
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
        <translation>G30 (butan)</translation>
    </message>
    <message>
        <source>G31 (propane)</source>
        <translation>G31 (propan)</translation>
    </message>
    <message>
        <source>inside, small or poorly ventilated</source>
        <translation>wewnątrz, małe lub słabo wentylowane</translation>
    </message>
    <message>
        <source>inside, a ventilated room</source>
        <translation>wewnątrz, pomieszczenie wentylowane</translation>
    </message>
    <message>
        <source>inside, a large ventilated room</source>
        <translation>wewnątrz, duże pomieszczenie wentylowane</translation>
    </message>
    <message>
        <source>buried</source>
        <translation>zakopana</translation>
    </message>
    <message>
        <source>water gauge, to 120 mbar</source>
        <translation>manometr wodny, do 120 mbar</translation>
    </message>
    <message>
        <source>gauge with heavy fluid (1.99), to 200 mbar</source>
        <translation>manometr z ciężką cieczą (1.99), do 200 mbar</translation>
    </message>
    <message>
        <source>electronic, one decimal, to 200 mbar</source>
        <translation>elektroniczny, jedno miejsce po przecinku, do 200 mbar</translation>
    </message>
    <message>
        <source>electronic, two decimals, to 200 mbar</source>
        <translation>elektroniczny, dwa miejsca po przecinku, do 200 mbar</translation>
    </message>
    <message>
        <source>electronic, one decimal, to 2 bar</source>
        <translation>elektroniczny, jedno miejsce po przecinku, do 2 bar</translation>
    </message>
    <message>
        <source>electronic, no decimals, to 20 bar</source>
        <translation>elektroniczny, bez miejsc po przecinku, do 20 bar</translation>
    </message>
    <message>
        <source>mercury gauge, to 1 bar</source>
        <translation>manometr rtęciowy, do 1 bar</translation>
    </message>
    <message>
        <source>the fuel gas</source>
        <translation>gaz palny</translation>
    </message>
    <message>
        <source>air or nitrogen</source>
        <translation>powietrze lub azot</translation>
    </message>
    <message>
        <source>condensing boiler</source>
        <translation>kocioł kondensacyjny</translation>
    </message>
    <message>
        <source>boiler, not condensing</source>
        <translation>kocioł niekondensacyjny</translation>
    </message>
    <message>
        <source>warm-air heater, circulator</source>
        <translation>nagrzewnica powietrza, cyrkulator</translation>
    </message>
    <message>
        <source>fire before a back boiler</source>
        <translation>kominek gazowy przed kotłem wbudowanym</translation>
    </message>
    <message>
        <source>fire, open-flued space heater</source>
        <translation>kominek gazowy, ogrzewacz z otwartą komorą spalania</translation>
    </message>
    <message>
        <source>water heater, open-flued</source>
        <translation>podgrzewacz wody, otwarta komora spalania</translation>
    </message>
    <message>
        <source>water heater, room-sealed</source>
        <translation>podgrzewacz wody, zamknięta komora spalania</translation>
    </message>
    <message>
        <source>space heater, flueless</source>
        <translation>ogrzewacz bez odprowadzenia spalin</translation>
    </message>
    <message>
        <source>range cooker with a flue</source>
        <translation>kuchnia z odprowadzeniem spalin</translation>
    </message>
    <message>
        <source>tumble dryer</source>
        <translation>suszarka bębnowa</translation>
    </message>
    <message>
        <source>decorative fuel effect fire</source>
        <translation>kominek gazowy dekoracyjny</translation>
    </message>
    <message>
        <source>LPG cabinet heater</source>
        <translation>ogrzewacz szafkowy LPG</translation>
    </message>
    <message>
        <source>back boiler</source>
        <translation>kocioł wbudowany za kominkiem</translation>
    </message>
    <message>
        <source>flueless water heater</source>
        <translation>podgrzewacz wody bez odprowadzenia spalin</translation>
    </message>
    <message>
        <source>oven</source>
        <translation>piekarnik</translation>
    </message>
    <message>
        <source>grill</source>
        <translation>grill</translation>
    </message>
    <message>
        <source>hotplate</source>
        <translation>płyta grzejna</translation>
    </message>
    <message>
        <source>another</source>
        <translation>inne</translation>
    </message>
    <message>
        <source>room-sealed</source>
        <translation>zamknięta komora spalania</translation>
    </message>
    <message>
        <source>open-flued</source>
        <translation>otwarta komora spalania</translation>
    </message>
    <message>
        <source>flueless</source>
        <translation>bez odprowadzenia spalin</translation>
    </message>
    <message>
        <source>net</source>
        <translation>netto</translation>
    </message>
    <message>
        <source>gross</source>
        <translation>brutto</translation>
    </message>
    <message>
        <source>metric (m³)</source>
        <translation>metryczny (m³)</translation>
    </message>
    <message>
        <source>imperial (ft³)</source>
        <translation>imperialny (ft³)</translation>
    </message>
    <message>
        <source>volume worked out by hand</source>
        <translation>objętość obliczona ręcznie</translation>
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
        <translation>brak</translation>
    </message>
    <message>
        <source>fixed factor of bills</source>
        <translation>stały współczynnik z rachunków</translation>
    </message>
    <message>
        <source>by pressure, temperature, height</source>
        <translation>według ciśnienia, temperatury, wysokości</translation>
    </message>
    <message>
        <source>a room</source>
        <translation>pomieszczenie</translation>
    </message>
    <message>
        <source>an internal space: hall, landing</source>
        <translation>przestrzeń wewnętrzna: korytarz, podest</translation>
    </message>
    <message>
        <source>a boiler room, above 70 kW</source>
        <translation>kotłownia, powyżej 70 kW</translation>
    </message>
    <message>
        <source>a boiler enclosure, above 70 kW</source>
        <translation>obudowa kotła, powyżej 70 kW</translation>
    </message>
    <message>
        <source>up to half of the time</source>
        <translation>do połowy czasu</translation>
    </message>
    <message>
        <source>half to three quarters</source>
        <translation>od połowy do trzech czwartych</translation>
    </message>
    <message>
        <source>more than that</source>
        <translation>więcej</translation>
    </message>
    <message>
        <source>an appliance with a flue</source>
        <translation>urządzenie z odprowadzeniem spalin</translation>
    </message>
    <message>
        <source>a cooker</source>
        <translation>kuchenka</translation>
    </message>
    <message>
        <source>a compartment, vents to a room</source>
        <translation>komora, otwory do pomieszczenia</translation>
    </message>
    <message>
        <source>a compartment, vents to outside</source>
        <translation>komora, otwory na zewnątrz</translation>
    </message>
    <message>
        <source>a door</source>
        <translation>drzwi</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nieznane</translation>
    </message>
    <message>
        <source>straight to outside</source>
        <translation>prosto na zewnątrz</translation>
    </message>
    <message>
        <source>through one inside wall</source>
        <translation>przez jedną ścianę wewnętrzną</translation>
    </message>
    <message>
        <source>through more inside walls</source>
        <translation>przez więcej ścian wewnętrznych</translation>
    </message>
    <message>
        <source>high</source>
        <translation>wysoko</translation>
    </message>
    <message>
        <source>low</source>
        <translation>nisko</translation>
    </message>
    <message>
        <source>outdoors</source>
        <translation>na zewnątrz</translation>
    </message>
    <message>
        <source>beside the appliance</source>
        <translation>obok urządzenia</translation>
    </message>
    <message>
        <source>elsewhere</source>
        <translation>gdzie indziej</translation>
    </message>
    <message>
        <source>England, Wales, Scotland</source>
        <translation>Anglia, Walia, Szkocja</translation>
    </message>
    <message>
        <source>BS 6891 before 2015</source>
        <translation>BS 6891 przed 2015</translation>
    </message>
    <message>
        <source>BS 6891:2015</source>
        <translation>BS 6891:2015</translation>
    </message>
    <message>
        <source>small (IGEM/UP/1B)</source>
        <translation>mała (IGEM/UP/1B)</translation>
    </message>
    <message>
        <source>larger (IGE/UP/1, 1A)</source>
        <translation>większa (IGE/UP/1, 1A)</translation>
    </message>
    <message>
        <source>high: all heaters at maximum</source>
        <translation>wysokie: wszystkie ogrzewacze na maksimum</translation>
    </message>
    <message>
        <source>less than that</source>
        <translation>mniej</translation>
    </message>
    <message>
        <source>examined, in order</source>
        <translation>sprawdzono, w porządku</translation>
    </message>
    <message>
        <source>not in order</source>
        <translation>nie w porządku</translation>
    </message>
    <message>
        <source>examined, there is none</source>
        <translation>sprawdzono, nie ma</translation>
    </message>
    <message>
        <source>read, in order</source>
        <translation>odczytano, w porządku</translation>
    </message>
    <message>
        <source>read, to be looked at again</source>
        <translation>odczytano, do ponownego sprawdzenia</translation>
    </message>
    <message>
        <source>not read</source>
        <translation>nie odczytano</translation>
    </message>
    <message>
        <source>gas directly disconnected</source>
        <translation>gaz bezpośrednio odłączony</translation>
    </message>
    <message>
        <source>purging that harms nothing</source>
        <translation>odpowietrzanie, które niczemu nie szkodzi</translation>
    </message>
    <message>
        <source>work on the appliance</source>
        <translation>praca przy urządzeniu</translation>
    </message>
    <message>
        <source>no meter and no test point</source>
        <translation>brak gazomierza i króćca pomiarowego</translation>
    </message>
    <message>
        <source>meter not accessible</source>
        <translation>gazomierz niedostępny</translation>
    </message>
    <message>
        <source>meter’s display not working</source>
        <translation>wyświetlacz gazomierza nie działa</translation>
    </message>
    <message>
        <source>does not apply</source>
        <translation>nie dotyczy</translation>
    </message>
    <message>
        <source>not checked</source>
        <translation>nie sprawdzono</translation>
    </message>
    <message>
        <source>on</source>
        <translation>włączony</translation>
    </message>
    <message>
        <source>off at the control valve</source>
        <translation>zamknięty zaworem głównym</translation>
    </message>
    <message>
        <source>no credit</source>
        <translation>brak środków na liczniku</translation>
    </message>
    <message>
        <source>meter removed</source>
        <translation>gazomierz usunięto</translation>
    </message>
    <message>
        <source>premises empty, gas off</source>
        <translation>obiekt pusty, gaz zamknięty</translation>
    </message>
    <message>
        <source>inspected</source>
        <translation>skontrolowano</translation>
    </message>
    <message>
        <source>visual check only</source>
        <translation>tylko oględziny</translation>
    </message>
    <message>
        <source>not inspected</source>
        <translation>nie skontrolowano</translation>
    </message>
    <message>
        <source>none of it</source>
        <translation>nic z niego</translation>
    </message>
    <message>
        <source>seen through its hatches</source>
        <translation>widziano przez otwory rewizyjne</translation>
    </message>
    <message>
        <source>seen in part through its hatches</source>
        <translation>widziano częściowo przez otwory rewizyjne</translation>
    </message>
    <message>
        <source>without hatches, not seen</source>
        <translation>bez otworów rewizyjnych, nie widziano</translation>
    </message>
    <message>
        <source>none found</source>
        <translation>nie stwierdzono</translation>
    </message>
    <message>
        <source>found</source>
        <translation>stwierdzono</translation>
    </message>
    <message>
        <source>a replacement</source>
        <translation>wymiana</translation>
    </message>
    <message>
        <source>an existing one, moved</source>
        <translation>istniejące, przeniesione</translation>
    </message>
    <message>
        <source>flue-gas heat recovery</source>
        <translation>odzysk ciepła ze spalin</translation>
    </message>
    <message>
        <source>weather compensation</source>
        <translation>regulacja pogodowa</translation>
    </message>
    <message>
        <source>load compensation</source>
        <translation>regulacja obciążeniowa</translation>
    </message>
    <message>
        <source>smart thermostat with automation and optimisation</source>
        <translation>inteligentny termostat z automatyką i optymalizacją</translation>
    </message>
    <message>
        <source>an inside drain or stack</source>
        <translation>odpływ lub pion wewnętrzny</translation>
    </message>
    <message>
        <source>an outside drain or gully</source>
        <translation>odpływ lub wpust zewnętrzny</translation>
    </message>
    <message>
        <source>a soakaway</source>
        <translation>studnia chłonna</translation>
    </message>
    <message>
        <source>a pump</source>
        <translation>pompa</translation>
    </message>
    <message>
        <source>yearly service</source>
        <translation>przegląd roczny</translation>
    </message>
    <message>
        <source>breakdown</source>
        <translation>awaria</translation>
    </message>
    <message>
        <source>after a repair</source>
        <translation>po naprawie</translation>
    </message>
    <message>
        <source>fitted, tested, works</source>
        <translation>zamontowany, zbadany, działa</translation>
    </message>
    <message>
        <source>fitted, does not work</source>
        <translation>zamontowany, nie działa</translation>
    </message>
    <message>
        <source>fitted, not tested</source>
        <translation>zamontowany, niezbadany</translation>
    </message>
    <message>
        <source>given</source>
        <translation>udzielono</translation>
    </message>
    <message>
        <source>refused</source>
        <translation>odmówiono</translation>
    </message>
    <message>
        <source>nobody to ask</source>
        <translation>nie było kogo zapytać</translation>
    </message>
    <message>
        <source>turned off at its own valve</source>
        <translation>zamknięto własnym zaworem</translation>
    </message>
    <message>
        <source>turned off at the emergency control valve</source>
        <translation>zamknięto awaryjnym zaworem odcinającym</translation>
    </message>
    <message>
        <source>put right at once</source>
        <translation>naprawiono od razu</translation>
    </message>
    <message>
        <source>not made safe</source>
        <translation>nie zabezpieczono</translation>
    </message>
    <message>
        <source>on, the appliance off</source>
        <translation>włączony, urządzenie wyłączone</translation>
    </message>
    <message>
        <source>signed for</source>
        <translation>podpisano odbiór</translation>
    </message>
    <message>
        <source>not present, copy left</source>
        <translation>nieobecny, pozostawiono kopię</translation>
    </message>
    <message>
        <source>design</source>
        <translation>projekt</translation>
    </message>
    <message>
        <source>construction</source>
        <translation>konstrukcja</translation>
    </message>
    <message>
        <source>manner of installation</source>
        <translation>sposób montażu</translation>
    </message>
    <message>
        <source>modification</source>
        <translation>przeróbka</translation>
    </message>
    <message>
        <source>servicing</source>
        <translation>serwis</translation>
    </message>
    <message>
        <source>in the room</source>
        <translation>w pomieszczeniu</translation>
    </message>
    <message>
        <source>in order</source>
        <translation>w porządku</translation>
    </message>
    <message>
        <source>Landlord&apos;s gas safety check</source>
        <translation>Kontrola bezpieczeństwa gazowego wynajmującego</translation>
    </message>
    <message>
        <source>Home owner&apos;s gas safety check</source>
        <translation>Kontrola bezpieczeństwa gazowego właściciela domu</translation>
    </message>
    <message>
        <source>Installation and commissioning of an appliance</source>
        <translation>Montaż i uruchomienie urządzenia</translation>
    </message>
    <message>
        <source>Service or repair</source>
        <translation>Przegląd lub naprawa</translation>
    </message>
    <message>
        <source>New or altered pipework</source>
        <translation>Nowe lub zmienione rury</translation>
    </message>
    <message>
        <source>Pipework beyond the small domestic</source>
        <translation>Instalacja większa niż mała domowa</translation>
    </message>
    <message>
        <source>Investigation of CO or fumes in a room</source>
        <translation>Badanie CO lub spalin w pomieszczeniu</translation>
    </message>
    <message>
        <source>Unsafe situation</source>
        <translation>Sytuacja niebezpieczna</translation>
    </message>
    <message>
        <source>Gas on arrival</source>
        <translation>Gaz po przybyciu</translation>
    </message>
    <message>
        <source>What remains to be done</source>
        <translation>Co pozostaje do zrobienia</translation>
    </message>
    <message>
        <source>Responsible person told what was found</source>
        <translation>Osobę odpowiedzialną poinformowano o ustaleniach</translation>
    </message>
    <message>
        <source>Emergency notice at the meter</source>
        <translation>Tabliczka alarmowa przy gazomierzu</translation>
    </message>
    <message>
        <source>Main bonding seen at the meter</source>
        <translation>Główne połączenie wyrównawcze widoczne przy gazomierzu</translation>
    </message>
    <message>
        <source>Combustion analyser</source>
        <translation>Analizator spalania</translation>
    </message>
    <message>
        <source>Gauge for the appliances&apos; pressures</source>
        <translation>Manometr do ciśnień urządzeń</translation>
    </message>
    <message>
        <source>Operation and controls demonstrated</source>
        <translation>Pokazano obsługę i regulację</translation>
    </message>
    <message>
        <source>Maker&apos;s instructions left with the owner or occupier</source>
        <translation>Instrukcję producenta pozostawiono właścicielowi lub użytkownikowi</translation>
    </message>
    <message>
        <source>Reference readings explained</source>
        <translation>Objaśniono odczyty odniesienia</translation>
    </message>
    <message>
        <source>Advice given</source>
        <translation>Udzielona porada</translation>
    </message>
    <message>
        <source>Work completed on</source>
        <translation>Pracę ukończono</translation>
    </message>
    <message>
        <source>Building regulations notification</source>
        <translation>Zgłoszenie według przepisów budowlanych</translation>
    </message>
    <message>
        <source>Information on operating and maintaining handed over</source>
        <translation>Przekazano informacje o obsłudze i konserwacji</translation>
    </message>
    <message>
        <source>Who called, and why</source>
        <translation>Kto wezwał i dlaczego</translation>
    </message>
    <message>
        <source>Reference of the emergency service or LPG supplier</source>
        <translation>Numer zgłoszenia pogotowia gazowego lub dostawcy LPG</translation>
    </message>
    <message>
        <source>Alarm that went off: make and type</source>
        <translation>Czujnik, który zadziałał: marka i typ</translation>
    </message>
    <message>
        <source>Alarm to be replaced by</source>
        <translation>Czujnik wymienić do</translation>
    </message>
    <message>
        <source>Highest reading that the alarm shows</source>
        <translation>Najwyższy odczyt wskazany przez czujnik</translation>
    </message>
    <message>
        <source>Symptoms, and whose</source>
        <translation>Objawy i u kogo</translation>
    </message>
    <message>
        <source>Medical advice urged on those unwell</source>
        <translation>Chorym zalecono poradę lekarską</translation>
    </message>
    <message>
        <source>Who was in the premises</source>
        <translation>Kto był w obiekcie</translation>
    </message>
    <message>
        <source>Weather and wind</source>
        <translation>Pogoda i wiatr</translation>
    </message>
    <message>
        <source>Adjoining premises and shared flues</source>
        <translation>Sąsiednie obiekty i wspólne przewody spalinowe</translation>
    </message>
    <message>
        <source>Appliances of other fuels</source>
        <translation>Urządzenia na inne paliwa</translation>
    </message>
    <message>
        <source>Cause found</source>
        <translation>Stwierdzona przyczyna</translation>
    </message>
    <message>
        <source>What was done about it</source>
        <translation>Co z tym zrobiono</translation>
    </message>
    <message>
        <source>How the gas was left</source>
        <translation>W jakim stanie pozostawiono gaz</translation>
    </message>
    <message>
        <source>What was done with it</source>
        <translation>Co z nim zrobiono</translation>
    </message>
    <message>
        <source>Why it was not inspected</source>
        <translation>Dlaczego nie skontrolowano</translation>
    </message>
    <message>
        <source>Checked on that day</source>
        <translation>Sprawdzono tego dnia</translation>
    </message>
    <message>
        <source>Last check, or the deadline it counted for</source>
        <translation>Ostatnia kontrola lub termin, na który się liczyła</translation>
    </message>
    <message>
        <source>Location suits it</source>
        <translation>Miejsce jest odpowiednie</translation>
    </message>
    <message>
        <source>Stable and secure</source>
        <translation>Stabilne i zamocowane</translation>
    </message>
    <message>
        <source>Gas connection and its valve</source>
        <translation>Przyłącze gazu i jego zawór</translation>
    </message>
    <message>
        <source>No signs of heat, soot or incomplete combustion</source>
        <translation>Brak śladów przegrzania, sadzy lub niepełnego spalania</translation>
    </message>
    <message>
        <source>Clearances and compartment</source>
        <translation>Odstępy i komora</translation>
    </message>
    <message>
        <source>Route of the flue</source>
        <translation>Przebieg przewodu spalinowego</translation>
    </message>
    <message>
        <source>Flue along its whole length: condition, joints, fall</source>
        <translation>Przewód spalinowy na całej długości: stan, połączenia, spadek</translation>
    </message>
    <message>
        <source>Terminal: place and condition</source>
        <translation>Wylot spalin: miejsce i stan</translation>
    </message>
    <message>
        <source>Flue in a void</source>
        <translation>Przewód spalinowy w przestrzeni zamkniętej</translation>
    </message>
    <message>
        <source>What could not be seen of the flue</source>
        <translation>Czego nie było widać z przewodu spalinowego</translation>
    </message>
    <message>
        <source>Ventilation clear and of the size needed</source>
        <translation>Wentylacja drożna i o wymaganej wielkości</translation>
    </message>
    <message>
        <source>Flue flow test</source>
        <translation>Próba ciągu przewodu spalinowego</translation>
    </message>
    <message>
        <source>Spillage test</source>
        <translation>Próba cofania spalin</translation>
    </message>
    <message>
        <source>Spillage test with fans running</source>
        <translation>Próba cofania spalin przy pracujących wentylatorach</translation>
    </message>
    <message>
        <source>Case and its seal</source>
        <translation>Obudowa i jej uszczelnienie</translation>
    </message>
    <message>
        <source>Gas rate, as read</source>
        <translation>Zużycie gazu według odczytu</translation>
    </message>
    <message>
        <source>Heat input, as worked out from it</source>
        <translation>Obciążenie cieplne obliczone z odczytu</translation>
    </message>
    <message>
        <source>That heat input is</source>
        <translation>To obciążenie cieplne jest</translation>
    </message>
    <message>
        <source>Flame supervision and other safety devices</source>
        <translation>Kontrola płomienia i inne zabezpieczenia</translation>
    </message>
    <message>
        <source>Flame picture</source>
        <translation>Wygląd płomienia</translation>
    </message>
    <message>
        <source>Condensate drain and trap</source>
        <translation>Odpływ i syfon kondensatu</translation>
    </message>
    <message>
        <source>Pressure relief and overheat cut-out</source>
        <translation>Zawór bezpieczeństwa i ogranicznik temperatury</translation>
    </message>
    <message>
        <source>Serviced at this visit</source>
        <translation>Przegląd wykonano podczas tej wizyty</translation>
    </message>
    <message>
        <source>Check included the matters of regulation 26(9)(a) to (d)</source>
        <translation>Kontrola objęła sprawy z regulation 26(9)(a) to (d) (przepis 26(9)(a) do (d))</translation>
    </message>
    <message>
        <source>Safety defects</source>
        <translation>Wady bezpieczeństwa</translation>
    </message>
    <message>
        <source>The defects found</source>
        <translation>Stwierdzone wady</translation>
    </message>
    <message>
        <source>Remedial action taken</source>
        <translation>Podjęte działania naprawcze</translation>
    </message>
    <message>
        <source>Action taken on</source>
        <translation>Działanie podjęto dnia</translation>
    </message>
    <message>
        <source>Action taken by</source>
        <translation>Działanie podjął</translation>
    </message>
    <message>
        <source>Safe to use</source>
        <translation>Safe to use (bezpieczne w użyciu)</translation>
    </message>
    <message>
        <source>New or replacement</source>
        <translation>Nowe lub w zamian</translation>
    </message>
    <message>
        <source>Time control</source>
        <translation>Sterowanie czasowe</translation>
    </message>
    <message>
        <source>Room temperature control</source>
        <translation>Regulacja temperatury pomieszczenia</translation>
    </message>
    <message>
        <source>Boiler interlock</source>
        <translation>Blokada kotła</translation>
    </message>
    <message>
        <source>Heating zones</source>
        <translation>Strefy ogrzewania</translation>
    </message>
    <message>
        <source>Thermostatic radiator valves</source>
        <translation>Termostatyczne zawory grzejnikowe</translation>
    </message>
    <message>
        <source>Cylinder thermostat</source>
        <translation>Termostat zasobnika</translation>
    </message>
    <message>
        <source>Automatic bypass</source>
        <translation>Automatyczne obejście</translation>
    </message>
    <message>
        <source>Further measure of a combination boiler</source>
        <translation>Dodatkowy środek kotła dwufunkcyjnego</translation>
    </message>
    <message>
        <source>System cleaned and flushed</source>
        <translation>Układ wyczyszczono i przepłukano</translation>
    </message>
    <message>
        <source>Cleaner used, and how it was flushed</source>
        <translation>Użyty środek czyszczący i sposób płukania</translation>
    </message>
    <message>
        <source>Inhibitor and its quantity</source>
        <translation>Inhibitor i jego ilość</translation>
    </message>
    <message>
        <source>Filter in the system</source>
        <translation>Filtr w układzie</translation>
    </message>
    <message>
        <source>Hardness of the mains water, ppm</source>
        <translation>Twardość wody wodociągowej, ppm</translation>
    </message>
    <message>
        <source>Scale reducer</source>
        <translation>Ochrona przed kamieniem</translation>
    </message>
    <message>
        <source>System&apos;s water pressure, cold</source>
        <translation>Ciśnienie wody w układzie, na zimno</translation>
    </message>
    <message>
        <source>Flow temperature by design</source>
        <translation>Projektowa temperatura zasilania</translation>
    </message>
    <message>
        <source>Heating, flow temperature</source>
        <translation>Ogrzewanie, temperatura zasilania</translation>
    </message>
    <message>
        <source>Heating, return temperature</source>
        <translation>Ogrzewanie, temperatura powrotu</translation>
    </message>
    <message>
        <source>Hot water, gas rate</source>
        <translation>Ciepła woda, zużycie gazu</translation>
    </message>
    <message>
        <source>Hot water, inlet pressure at its highest rate</source>
        <translation>Ciepła woda, ciśnienie na wlocie przy największej mocy</translation>
    </message>
    <message>
        <source>Pipe sizing confirmed</source>
        <translation>Dobór średnic rur potwierdzono</translation>
    </message>
    <message>
        <source>Condensate: route, material, insulation</source>
        <translation>Kondensat: przebieg, materiał, izolacja</translation>
    </message>
    <message>
        <source>Condensate ends in</source>
        <translation>Kondensat odprowadzono do</translation>
    </message>
    <message>
        <source>Condensate trap filled</source>
        <translation>Syfon kondensatu napełniono</translation>
    </message>
    <message>
        <source>Installed and commissioned by the maker&apos;s instructions</source>
        <translation>Zamontowano i uruchomiono według instrukcji producenta</translation>
    </message>
    <message>
        <source>Service interval advised</source>
        <translation>Zalecany odstęp między przeglądami</translation>
    </message>
    <message>
        <source>Kind of service</source>
        <translation>Rodzaj przeglądu</translation>
    </message>
    <message>
        <source>Fault as told</source>
        <translation>Usterka według zgłoszenia</translation>
    </message>
    <message>
        <source>Work done by the maker&apos;s schedule</source>
        <translation>Prace wykonane według wykazu producenta</translation>
    </message>
    <message>
        <source>Parts fitted</source>
        <translation>Zamontowane części</translation>
    </message>
    <message>
        <source>Combustion adjusted</source>
        <translation>Wyregulowano spalanie</translation>
    </message>
    <message>
        <source>CO before, highest rate</source>
        <translation>CO przedtem, największa moc</translation>
    </message>
    <message>
        <source>CO₂ before, highest rate</source>
        <translation>CO₂ przedtem, największa moc</translation>
    </message>
    <message>
        <source>CO before, lowest rate</source>
        <translation>CO przedtem, najmniejsza moc</translation>
    </message>
    <message>
        <source>CO₂ before, lowest rate</source>
        <translation>CO₂ przedtem, najmniejsza moc</translation>
    </message>
    <message>
        <source>Expansion vessel and system pressure</source>
        <translation>Naczynie wzbiorcze i ciśnienie w układzie</translation>
    </message>
    <message>
        <source>Inhibitor checked</source>
        <translation>Inhibitor sprawdzono</translation>
    </message>
    <message>
        <source>Next service due</source>
        <translation>Następny przegląd</translation>
    </message>
    <message>
        <source>Name of the room</source>
        <translation>Nazwa pomieszczenia</translation>
    </message>
    <message>
        <source>CO alarm</source>
        <translation>Czujnik CO</translation>
    </message>
    <message>
        <source>CO alarm to be replaced by</source>
        <translation>Czujnik CO wymienić do</translation>
    </message>
    <message>
        <source>Smoke alarm</source>
        <translation>Czujnik dymu</translation>
    </message>
    <message>
        <source>Smoke alarm to be replaced by</source>
        <translation>Czujnik dymu wymienić do</translation>
    </message>
    <message>
        <source>About the alarms</source>
        <translation>O czujnikach</translation>
    </message>
    <message>
        <source>What was found in the room</source>
        <translation>Co stwierdzono w pomieszczeniu</translation>
    </message>
    <message>
        <source>Gas is escaping</source>
        <translation>Gaz się ulatnia</translation>
    </message>
    <message>
        <source>Responsible person, and as what</source>
        <translation>Osoba odpowiedzialna i w jakim charakterze</translation>
    </message>
    <message>
        <source>Permission to make it safe</source>
        <translation>Zgoda na zabezpieczenie</translation>
    </message>
    <message>
        <source>Made safe by</source>
        <translation>Zabezpieczono przez</translation>
    </message>
    <message>
        <source>How it was made safe</source>
        <translation>Jak zabezpieczono</translation>
    </message>
    <message>
        <source>Label fixed</source>
        <translation>Umieszczono etykietę</translation>
    </message>
    <message>
        <source>Number of the label</source>
        <translation>Numer etykiety</translation>
    </message>
    <message>
        <source>Who refused</source>
        <translation>Kto odmówił</translation>
    </message>
    <message>
        <source>Refusal, in their words</source>
        <translation>Odmowa, własnymi słowami</translation>
    </message>
    <message>
        <source>Supply was left</source>
        <translation>Dopływ gazu pozostawiono</translation>
    </message>
    <message>
        <source>Who else was told</source>
        <translation>Kogo jeszcze powiadomiono</translation>
    </message>
    <message>
        <source>Told at</source>
        <translation>Powiadomiono o godzinie</translation>
    </message>
    <message>
        <source>Reference that they gave</source>
        <translation>Podany przez nich numer</translation>
    </message>
    <message>
        <source>Work needed to put it right</source>
        <translation>Prace potrzebne do naprawy</translation>
    </message>
    <message>
        <source>Notice received</source>
        <translation>Ostrzeżenie odebrano</translation>
    </message>
    <message>
        <source>Notice received by</source>
        <translation>Ostrzeżenie odebrał(a)</translation>
    </message>
    <message>
        <source>Where the copy was left</source>
        <translation>Gdzie pozostawiono kopię</translation>
    </message>
    <message>
        <source>To be reported under RIDDOR 11(2)</source>
        <translation>Podlega zgłoszeniu według RIDDOR 11(2)</translation>
    </message>
    <message>
        <source>Because of its</source>
        <translation>Ze względu na</translation>
    </message>
    <message>
        <source>Known of since</source>
        <translation>Wiadomo od</translation>
    </message>
    <message>
        <source>Reported to HSE on</source>
        <translation>Zgłoszono do HSE dnia</translation>
    </message>
    <message>
        <source>Reference of the report</source>
        <translation>Numer zgłoszenia</translation>
    </message>
    <message>
        <source>Who installed or serviced it, and when</source>
        <translation>Kto zamontował lub serwisował i kiedy</translation>
    </message>
    <message>
        <source>Persons affected</source>
        <translation>Osoby poszkodowane</translation>
    </message>
    <message>
        <source>edition not chosen</source>
        <translation>nie wybrano wydania</translation>
    </message>
    <message>
        <source>registration %1</source>
        <translation>rejestracja %1</translation>
    </message>
    <message>
        <source>Gas Safety (Installation and Use) Regulations 1998, regulation 36(3)(c)</source>
        <translation>Gas Safety (Installation and Use) Regulations 1998, regulation 36(3)(c) (przepisy o bezpieczeństwie gazowym, montaż i użytkowanie, przepis 36(3)(c))</translation>
    </message>
    <message>
        <source>Gas Safety (Installation and Use) Regulations 1998, regulation 26(9)</source>
        <translation>Gas Safety (Installation and Use) Regulations 1998, regulation 26(9) (przepisy o bezpieczeństwie gazowym, montaż i użytkowanie, przepis 26(9))</translation>
    </message>
    <message>
        <source>Gas Safety (Installation and Use) Regulations 1998, regulations 26(9) and 33; BS 6798</source>
        <translation>Gas Safety (Installation and Use) Regulations 1998, regulations 26(9) and 33 (przepisy o bezpieczeństwie gazowym, montaż i użytkowanie, przepisy 26(9) i 33); BS 6798</translation>
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
        <translation>RIDDOR 2013, regulation 11(2) (przepis 11(2))</translation>
    </message>
    <message>
        <source>Building Regulations 2010, regulations 20 and 40</source>
        <translation>Building Regulations 2010, regulations 20 and 40 (przepisy budowlane, przepisy 20 i 40)</translation>
    </message>
    <message>
        <source>IGE/UP/1, IGE/UP/1A</source>
        <translation>IGE/UP/1, IGE/UP/1A</translation>
    </message>
    <message>
        <source>— none given</source>
        <translation>— brak</translation>
    </message>
    <message>
        <source>revision %1</source>
        <translation>wersja %1</translation>
    </message>
    <message>
        <source>digest</source>
        <translation>skrót</translation>
    </message>
    <message>
        <source>Location</source>
        <translation>Miejsce</translation>
    </message>
    <message>
        <source>Heat, soot, distress</source>
        <translation>Ciepło, sadza, uszkodzenia</translation>
    </message>
    <message>
        <source>Clearances</source>
        <translation>Odstępy</translation>
    </message>
    <message>
        <source>Gas connection</source>
        <translation>Przyłącze gazu</translation>
    </message>
    <message>
        <source>Flue, its whole length</source>
        <translation>Przewód spalinowy, cała długość</translation>
    </message>
    <message>
        <source>Terminal</source>
        <translation>Wylot spalin</translation>
    </message>
    <message>
        <source>Not seen of the flue</source>
        <translation>Niewidoczne z przewodu spalinowego</translation>
    </message>
    <message>
        <source>Ventilation</source>
        <translation>Wentylacja</translation>
    </message>
    <message>
        <source>Spillage, fans running</source>
        <translation>Cofanie spalin, wentylatory pracują</translation>
    </message>
    <message>
        <source>Case and seal</source>
        <translation>Obudowa i uszczelnienie</translation>
    </message>
    <message>
        <source>Safety devices</source>
        <translation>Zabezpieczenia</translation>
    </message>
    <message>
        <source>Condensate</source>
        <translation>Kondensat</translation>
    </message>
    <message>
        <source>Relief, overheat</source>
        <translation>Zawór bezp., przegrzanie</translation>
    </message>
    <message>
        <source>Serviced as well</source>
        <translation>Wykonano też przegląd</translation>
    </message>
    <message>
        <source>Gas rate</source>
        <translation>Zużycie gazu</translation>
    </message>
    <message>
        <source>Heat input</source>
        <translation>Obciążenie cieplne</translation>
    </message>
    <message>
        <source>Inlet, working</source>
        <translation>Wlot, robocze</translation>
    </message>
    <message>
        <source>Inlet, standing</source>
        <translation>Wlot, statyczne</translation>
    </message>
    <message>
        <source>Meter, standing</source>
        <translation>Gazomierz, statyczne</translation>
    </message>
    <message>
        <source>Meter, working</source>
        <translation>Gazomierz, robocze</translation>
    </message>
    <message>
        <source>By the maker’s instructions</source>
        <translation>Według instrukcji producenta</translation>
    </message>
    <message>
        <source>Expansion vessel</source>
        <translation>Naczynie wzbiorcze</translation>
    </message>
    <message>
        <source>Inhibitor</source>
        <translation>Inhibitor</translation>
    </message>
    <message>
        <source>Combination boiler, further</source>
        <translation>Kocioł dwufunkcyjny, dodatkowo</translation>
    </message>
    <message>
        <source>Mains hardness, ppm</source>
        <translation>Twardość wody, ppm</translation>
    </message>
    <message>
        <source>Water pressure, cold</source>
        <translation>Ciśnienie wody, na zimno</translation>
    </message>
    <message>
        <source>Demonstrated</source>
        <translation>Pokazano</translation>
    </message>
    <message>
        <source>Instructions left</source>
        <translation>Pozostawiono instrukcje</translation>
    </message>
    <message>
        <source>Information handed over</source>
        <translation>Przekazano informacje</translation>
    </message>
    <message>
        <source>Emergency reference</source>
        <translation>Numer zgłoszenia alarmowego</translation>
    </message>
    <message>
        <source>Medical advice urged</source>
        <translation>Zalecono poradę lekarską</translation>
    </message>
    <message>
        <source>Alarm, make and type</source>
        <translation>Czujnik, marka i typ</translation>
    </message>
    <message>
        <source>Highest on the alarm</source>
        <translation>Najwyższe na czujniku</translation>
    </message>
    <message>
        <source>Tested with</source>
        <translation>Badano za pomocą</translation>
    </message>
    <message>
        <source>Gauge&apos;s kind</source>
        <translation>Rodzaj manometru</translation>
    </message>
    <message>
        <source>Weaker parts taken off</source>
        <translation>Słabsze części zdjęto</translation>
    </message>
    <message>
        <source>Most operating</source>
        <translation>Największe robocze</translation>
    </message>
    <message>
        <source>Most incidental</source>
        <translation>Największe przypadkowe</translation>
    </message>
    <message>
        <source>Most of the supply</source>
        <translation>Największe zasilania</translation>
    </message>
    <message>
        <source>Well ventilated</source>
        <translation>Dobrze wentylowane</translation>
    </message>
    <message>
        <source>Gauge zeroed</source>
        <translation>Manometr wyzerowano</translation>
    </message>
    <message>
        <source>Smell during test</source>
        <translation>Zapach podczas badania</translation>
    </message>
    <message>
        <source>Volume passed at meter</source>
        <translation>Objętość przez gazomierz</translation>
    </message>
    <message>
        <source>All flames steady</source>
        <translation>Wszystkie płomienie stałe</translation>
    </message>
    <message>
        <source>Test point proved (fluid)</source>
        <translation>Króciec sprawdzono (płyn)</translation>
    </message>
    <message>
        <source>Disturbed joints proved</source>
        <translation>Naruszone połączenia sprawdzono</translation>
    </message>
    <message>
        <source>Standing pressure (meter)</source>
        <translation>Ciśnienie statyczne (gazomierz)</translation>
    </message>
    <message>
        <source>Working pressure (meter)</source>
        <translation>Ciśnienie robocze (gazomierz)</translation>
    </message>
    <message>
        <source>test %1</source>
        <translation>badanie %1</translation>
    </message>
    <message>
        <source>“%1” (can&apos;t be read)</source>
        <translation>„%1” (nie da się odczytać)</translation>
    </message>
    <message>
        <source>not made: stopped at let-by</source>
        <translation>nie wykonano: przerwano z powodu przepuszczania zaworu</translation>
    </message>
    <message>
        <source>no purge needed</source>
        <translation>odpowietrzenie niepotrzebne</translation>
    </message>
    <message>
        <source>no meter to read</source>
        <translation>brak gazomierza do odczytu</translation>
    </message>
    <message>
        <source>no appliance connected</source>
        <translation>brak podłączonych urządzeń</translation>
    </message>
    <message>
        <source>not entered</source>
        <translation>nie podano</translation>
    </message>
    <message>
        <source>not purged</source>
        <translation>nie odpowietrzono</translation>
    </message>
    <message>
        <source>the gas stays off</source>
        <translation>gaz pozostaje zamknięty</translation>
    </message>
    <message>
        <source>not taken</source>
        <translation>nie zmierzono</translation>
    </message>
    <message>
        <source>appliances not connected</source>
        <translation>urządzenia niepodłączone</translation>
    </message>
    <message>
        <source>card number not entered</source>
        <translation>nie podano numeru karty</translation>
    </message>
    <message>
        <source>card %1</source>
        <translation>karta %1</translation>
    </message>
    <message>
        <source>name not entered</source>
        <translation>nie podano nazwy</translation>
    </message>
    <message>
        <source>registration number not entered</source>
        <translation>nie podano numeru rejestracyjnego</translation>
    </message>
    <message>
        <source>Firm</source>
        <translation>Firma</translation>
    </message>
    <message>
        <source>electronic</source>
        <translation>elektroniczny</translation>
    </message>
    <message>
        <source>water (U-tube)</source>
        <translation>wodny (U-rurka)</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation>termin %1</translation>
    </message>
    <message>
        <source>%1 (typed in)</source>
        <translation>%1 (wpisano)</translation>
    </message>
    <message>
        <source>meter</source>
        <translation>gazomierz</translation>
    </message>
    <message>
        <source>not under test</source>
        <translation>niebadane</translation>
    </message>
    <message>
        <source>The volume was typed in instead of being worked out from this list.</source>
        <translation>Objętość wpisano, zamiast obliczać ją z tego wykazu.</translation>
    </message>
    <message>
        <source>—: not entered. The installation volume can&apos;t be worked out from what is known.</source>
        <translation>—: nie podano. Objętości instalacji nie da się obliczyć z tego, co wiadomo.</translation>
    </message>
    <message>
        <source>Installation volume: meter %1, pipes under test %2, fittings %3.</source>
        <translation>Objętość instalacji: gazomierz %1, badane rury %2, kształtki %3.</translation>
    </message>
    <message>
        <source>Who and where</source>
        <translation>Kto i gdzie</translation>
    </message>
    <message>
        <source>Date of the work</source>
        <translation>Data pracy</translation>
    </message>
    <message>
        <source>Instruments</source>
        <translation>Przyrządy</translation>
    </message>
    <message>
        <source>Gauges</source>
        <translation>Manometry</translation>
    </message>
    <message>
        <source>Instrument</source>
        <translation>Przyrząd</translation>
    </message>
    <message>
        <source>Serial number</source>
        <translation>Numer seryjny</translation>
    </message>
    <message>
        <source>Resolution</source>
        <translation>Rozdzielczość</translation>
    </message>
    <message>
        <source>Accuracy</source>
        <translation>Dokładność</translation>
    </message>
    <message>
        <source>Calibration</source>
        <translation>Wzorcowanie</translation>
    </message>
    <message>
        <source>—: not entered.</source>
        <translation>—: nie podano.</translation>
    </message>
    <message>
        <source>Installation</source>
        <translation>Instalacja</translation>
    </message>
    <message>
        <source>Meter&apos;s volume</source>
        <translation>Objętość gazomierza</translation>
    </message>
    <message>
        <source>Meter&apos;s serial number</source>
        <translation>Numer seryjny gazomierza</translation>
    </message>
    <message>
        <source>Where the meter is</source>
        <translation>Gdzie jest gazomierz</translation>
    </message>
    <message>
        <source>Emergency control valve</source>
        <translation>Awaryjny zawór odcinający</translation>
    </message>
    <message>
        <source>Operating pressure</source>
        <translation>Ciśnienie pracy</translation>
    </message>
    <message>
        <source>Supply pressure, most</source>
        <translation>Ciśnienie zasilania, największe</translation>
    </message>
    <message>
        <source>Pipework</source>
        <translation>Rury</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Nr</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Od</translation>
    </message>
    <message>
        <source>Leads to</source>
        <translation>Prowadzi do</translation>
    </message>
    <message>
        <source>Tube</source>
        <translation>Rura</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Długość</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Objętość</translation>
    </message>
    <message>
        <source>Volume from</source>
        <translation>Objętość według</translation>
    </message>
    <message>
        <source>Installation volume</source>
        <translation>Objętość instalacji</translation>
    </message>
    <message>
        <source>Settling</source>
        <translation>Stabilizacja</translation>
    </message>
    <message>
        <source>Tightness, second display</source>
        <translation>Szczelność, drugi wyświetlacz</translation>
    </message>
    <message>
        <source>—: not made, since let-by was found and stopped the test.</source>
        <translation>—: nie wykonano, ponieważ stwierdzono przepuszczanie zaworu i przerwano badanie.</translation>
    </message>
    <message>
        <source>No retest with appliances isolated was called for.</source>
        <translation>Ponowne badanie z odciętymi urządzeniami nie było potrzebne.</translation>
    </message>
    <message>
        <source>What was tested</source>
        <translation>Co zbadano</translation>
    </message>
    <message>
        <source>Readings as taken</source>
        <translation>Odczyty tak, jak je wzięto</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Etap</translation>
    </message>
    <message>
        <source>From (time)</source>
        <translation>Od (godz.)</translation>
    </message>
    <message>
        <source>To (time)</source>
        <translation>Do (godz.)</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Początek</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Koniec</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Zmiana</translation>
    </message>
    <message>
        <source>Smell and safe to touch</source>
        <translation>Zapach i bezpieczeństwo dotyku</translation>
    </message>
    <message>
        <source>Purge</source>
        <translation>Odpowietrzenie</translation>
    </message>
    <message>
        <source>Method, volume, flame</source>
        <translation>Sposób, objętość, płomień</translation>
    </message>
    <message>
        <source>Joints and pressures</source>
        <translation>Połączenia i ciśnienia</translation>
    </message>
    <message>
        <source>Not purged, since the gas stays off.</source>
        <translation>Nie odpowietrzono, ponieważ gaz pozostaje zamknięty.</translation>
    </message>
    <message>
        <source>Not made, since let-by was found and stopped the test.</source>
        <translation>Nie wykonano, ponieważ stwierdzono przepuszczanie zaworu i przerwano badanie.</translation>
    </message>
    <message>
        <source>There was a smell of gas.</source>
        <translation>Wyczuwalny był zapach gazu.</translation>
    </message>
    <message>
        <source>This installation lies outside the standard that it was tested to.</source>
        <translation>Ta instalacja wykracza poza normę, według której ją badano.</translation>
    </message>
    <message>
        <source>The valve lets by: no tightness test could be made.</source>
        <translation>Zawór przepuszcza: badania szczelności nie można było wykonać.</translation>
    </message>
    <message>
        <source>The installation was not found tight. The gas stays off until it is.</source>
        <translation>Nie stwierdzono szczelności instalacji. Gaz pozostaje zamknięty, dopóki nie będzie szczelna.</translation>
    </message>
    <message>
        <source>The installation was found tight at the last test.</source>
        <translation>W ostatnim badaniu stwierdzono szczelność instalacji.</translation>
    </message>
    <message>
        <source>The installation was found tight.</source>
        <translation>Stwierdzono szczelność instalacji.</translation>
    </message>
    <message>
        <source>Not yet a pass: something is to be looked at again.</source>
        <translation>Jeszcze nie spełnia: coś trzeba sprawdzić ponownie.</translation>
    </message>
    <message>
        <source>No verdict: the installation was not shown to be tight.</source>
        <translation>Bez orzeczenia: nie wykazano szczelności instalacji.</translation>
    </message>
    <message>
        <source>confirmed</source>
        <translation>potwierdzono</translation>
    </message>
    <message>
        <source>confirmed %1</source>
        <translation>potwierdzono %1</translation>
    </message>
    <message>
        <source>Limits marked confirmed: by %1 from the firm&apos;s own copy, %2.</source>
        <translation>Wartości graniczne oznaczone jako potwierdzone: %1, z własnego egzemplarza firmy, %2.</translation>
    </message>
    <message>
        <source>Limits marked confirmed: by %1 from the firm&apos;s own copy.</source>
        <translation>Wartości graniczne oznaczone jako potwierdzone: %1, z własnego egzemplarza firmy.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>all tests</source>
        <translation>wszystkie badania</translation>
    </message>
    <message>
        <source>Also seen to</source>
        <translation>Zajęto się też</translation>
    </message>
    <message>
        <source>Findings, with the limits used</source>
        <translation>Ustalenia z użytymi wartościami granicznymi</translation>
    </message>
    <message>
        <source>What to do first</source>
        <translation>Co zrobić najpierw</translation>
    </message>
    <message>
        <source>landlord’s</source>
        <translation>wynajmującego</translation>
    </message>
    <message>
        <source>tenant’s own</source>
        <translation>własne najemcy</translation>
    </message>
    <message>
        <source>home owner’s</source>
        <translation>właściciela domu</translation>
    </message>
    <message>
        <source>nothing entered</source>
        <translation>nic nie podano</translation>
    </message>
    <message>
        <source>a safety defect was found</source>
        <translation>stwierdzono wadę bezpieczeństwa</translation>
    </message>
    <message>
        <source>no safety defect was found</source>
        <translation>nie stwierdzono wady bezpieczeństwa</translation>
    </message>
    <message>
        <source>declared safe to use</source>
        <translation>uznano za safe to use (bezpieczne w użyciu)</translation>
    </message>
    <message>
        <source>declared not safe to use</source>
        <translation>uznano, że NIE jest safe to use (bezpieczne w użyciu)</translation>
    </message>
    <message>
        <source>Every appliance was inspected and declared safe to use.</source>
        <translation>Każde urządzenie skontrolowano i uznano za safe to use (bezpieczne w użyciu).</translation>
    </message>
    <message>
        <source>Not every appliance is safe to use: see below.</source>
        <translation>Nie każde urządzenie jest safe to use (bezpieczne w użyciu): patrz niżej.</translation>
    </message>
    <message>
        <source>A reading lies beyond its limit: see the findings.</source>
        <translation>Odczyt przekracza wartość graniczną: patrz ustalenia.</translation>
    </message>
    <message>
        <source>Declared safe to use where inspected, but something is to be looked at: see below.</source>
        <translation>Uznano za safe to use (bezpieczne w użyciu) tam, gdzie skontrolowano, ale coś trzeba sprawdzić: patrz niżej.</translation>
    </message>
    <message>
        <source>No appliance was inspected.</source>
        <translation>Nie skontrolowano żadnego urządzenia.</translation>
    </message>
    <message>
        <source>found; which was not entered</source>
        <translation>stwierdzono; nie podano jakie</translation>
    </message>
    <message>
        <source>— not entered</source>
        <translation>— nie podano</translation>
    </message>
    <message>
        <source>none needed</source>
        <translation>nie było potrzeby</translation>
    </message>
    <message>
        <source>Declared by the engineer</source>
        <translation>Oświadczenie inżyniera</translation>
    </message>
    <message>
        <source>NOT safe to use</source>
        <translation>NOT safe to use (NIE jest bezpieczne w użyciu)</translation>
    </message>
    <message>
        <source>Safe to use, by a visual check only</source>
        <translation>Safe to use (bezpieczne w użyciu), tylko na podstawie oględzin</translation>
    </message>
    <message>
        <source>— not declared</source>
        <translation>— bez oświadczenia</translation>
    </message>
    <message>
        <source>Looked at for obvious defects only: nothing was tested or measured.</source>
        <translation>Obejrzano tylko pod kątem widocznych wad: niczego nie zbadano ani nie zmierzono.</translation>
    </message>
    <message>
        <source>(a) effectiveness of the flue</source>
        <translation>(a) skuteczność odprowadzenia spalin</translation>
    </message>
    <message>
        <source>(b) supply of combustion air</source>
        <translation>(b) dopływ powietrza do spalania</translation>
    </message>
    <message>
        <source>(c) operating pressure</source>
        <translation>(c) ciśnienie pracy</translation>
    </message>
    <message>
        <source>(c) heat input</source>
        <translation>(c) obciążenie cieplne</translation>
    </message>
    <message>
        <source>(ca) combustion performance, in place of (c)</source>
        <translation>(ca) jakość spalania, zamiast (c)</translation>
    </message>
    <message>
        <source>(d) operation, so that it works safely</source>
        <translation>(d) działanie, tak aby pracowało bezpiecznie</translation>
    </message>
    <message>
        <source>to be looked at again</source>
        <translation>do ponownego sprawdzenia</translation>
    </message>
    <message>
        <source>there is none</source>
        <translation>nie ma</translation>
    </message>
    <message>
        <source>Visual check only: these matters were not examined.</source>
        <translation>Tylko oględziny: tych spraw nie sprawdzono.</translation>
    </message>
    <message>
        <source>Confirmed by the engineer: the check included the matters of regulation 26(9)(a) to (d).</source>
        <translation>Inżynier potwierdza: kontrola objęła sprawy z regulation 26(9)(a) to (d) (przepis 26(9)(a) do (d)).</translation>
    </message>
    <message>
        <source>The engineer says: the check did not include all matters of regulation 26(9)(a) to (d).</source>
        <translation>Inżynier oświadcza: kontrola NIE objęła wszystkich spraw z regulation 26(9)(a) to (d) (przepis 26(9)(a) do (d)).</translation>
    </message>
    <message>
        <source>Not confirmed by the engineer.</source>
        <translation>Inżynier nie potwierdził.</translation>
    </message>
    <message>
        <source>Combustion</source>
        <translation>Spalanie</translation>
    </message>
    <message>
        <source>O₂</source>
        <translation>O₂</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio, worked out</source>
        <translation>Stosunek CO/CO₂, obliczony</translation>
    </message>
    <message>
        <source>before, highest rate</source>
        <translation>przedtem, największa moc</translation>
    </message>
    <message>
        <source>before, lowest rate</source>
        <translation>przedtem, najmniejsza moc</translation>
    </message>
    <message>
        <source>—: not read, or not worked out.</source>
        <translation>—: nie odczytano lub nie obliczono.</translation>
    </message>
    <message>
        <source>Appliances and flues</source>
        <translation>Urządzenia i odprowadzenie spalin</translation>
    </message>
    <message>
        <source>Appliance</source>
        <translation>Urządzenie</translation>
    </message>
    <message>
        <source>Make and model</source>
        <translation>Marka i model</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Gdzie</translation>
    </message>
    <message>
        <source>Flue</source>
        <translation>Odprowadzenie spalin</translation>
    </message>
    <message>
        <source>Whose</source>
        <translation>Czyje</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Co zrobiono</translation>
    </message>
    <message>
        <source>GC number</source>
        <translation>Numer GC</translation>
    </message>
    <message>
        <source>Input on the plate</source>
        <translation>Moc na tabliczce</translation>
    </message>
    <message>
        <source>Matters of regulation 26(9)</source>
        <translation>Sprawy z regulation 26(9) (przepis 26(9))</translation>
    </message>
    <message>
        <source>Examined</source>
        <translation>Sprawdzono</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Wynik</translation>
    </message>
    <message>
        <source>Seen and read</source>
        <translation>Obejrzano i odczytano</translation>
    </message>
    <message>
        <source>—: nothing was read for it.</source>
        <translation>—: nic dla niego nie odczytano.</translation>
    </message>
    <message>
        <source>%1 or %2: keep the first</source>
        <translation>%1 lub %2: liczy się wcześniejszy termin</translation>
    </message>
    <message>
        <source>%1 by the checks kept here, %2 by the last check as entered: look again, keep the earlier</source>
        <translation>%1 według kontroli zapisanych tutaj, %2 według wpisanej ostatniej kontroli: sprawdzić ponownie, liczy się wcześniejszy termin</translation>
    </message>
    <message>
        <source>Dates of the check</source>
        <translation>Daty kontroli</translation>
    </message>
    <message>
        <source>Appliance and its flue</source>
        <translation>Urządzenie i odprowadzenie spalin</translation>
    </message>
    <message>
        <source>Checked on</source>
        <translation>Skontrolowano dnia</translation>
    </message>
    <message>
        <source>Was due by</source>
        <translation>Termin był do</translation>
    </message>
    <message>
        <source>Deadline kept</source>
        <translation>Termin zachowano</translation>
    </message>
    <message>
        <source>Next check due by</source>
        <translation>Następna kontrola do</translation>
    </message>
    <message>
        <source>no, anew</source>
        <translation>nie, od nowa</translation>
    </message>
    <message>
        <source>— not checked</source>
        <translation>— nie sprawdzono</translation>
    </message>
    <message>
        <source>—: not known here, or does not apply. A check in the two months that end with its deadline keeps the date (regulation 36A(1)); another starts twelve months anew.</source>
        <translation>—: tu nieznane lub nie dotyczy. Kontrola w ciągu dwóch miesięcy kończących się w terminie zachowuje datę (regulation 36A(1), przepis 36A(1)); każda inna rozpoczyna dwanaście miesięcy od nowa.</translation>
    </message>
    <message>
        <source>An existing tenant has a copy by %1, a new tenant before moving in (regulation 36(6)).</source>
        <translation>Obecny najemca otrzymuje kopię do %1, nowy najemca przed wprowadzeniem się (regulation 36(6), przepis 36(6)).</translation>
    </message>
    <message>
        <source>The landlord keeps this record until two further checks of the same appliance or flue have been made, and two years at least.</source>
        <translation>Wynajmujący przechowuje ten protokół, dopóki nie zostaną wykonane dwie dalsze kontrole tego samego urządzenia lub przewodu spalinowego, i co najmniej dwa lata.</translation>
    </message>
    <message>
        <source>Copies and keeping</source>
        <translation>Kopie i przechowywanie</translation>
    </message>
    <message>
        <source>Next check advised by</source>
        <translation>Następna kontrola zalecana do</translation>
    </message>
    <message>
        <source>(ix) Registration number</source>
        <translation>(ix) Numer rejestracyjny</translation>
    </message>
    <message>
        <source>Findings: %1</source>
        <translation>Ustalenia: %1</translation>
    </message>
    <message>
        <source>Alarms</source>
        <translation>Czujniki</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Pomieszczenie</translation>
    </message>
    <message>
        <source>Replace by</source>
        <translation>Wymienić do</translation>
    </message>
    <message>
        <source>Unsafe situations, by the engineer’s decision</source>
        <translation>Sytuacje niebezpieczne, według decyzji inżyniera</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Klasa</translation>
    </message>
    <message>
        <source>Meter and pipework</source>
        <translation>Gazomierz i rury</translation>
    </message>
    <message>
        <source>Controls</source>
        <translation>Regulacja</translation>
    </message>
    <message>
        <source>Water of the system</source>
        <translation>Woda w układzie</translation>
    </message>
    <message>
        <source>Gas supply and rate</source>
        <translation>Dopływ i zużycie gazu</translation>
    </message>
    <message>
        <source>Heating and hot water</source>
        <translation>Ogrzewanie i ciepła woda</translation>
    </message>
    <message>
        <source>Flue and air</source>
        <translation>Odprowadzenie spalin i powietrze</translation>
    </message>
    <message>
        <source>Air inlet and condensate</source>
        <translation>Wlot powietrza i kondensat</translation>
    </message>
    <message>
        <source>Safety devices and flame</source>
        <translation>Zabezpieczenia i płomień</translation>
    </message>
    <message>
        <source>Work done by the maker’s schedule</source>
        <translation>Prace wykonane według wykazu producenta</translation>
    </message>
    <message>
        <source>Gas and rate</source>
        <translation>Gaz i zużycie</translation>
    </message>
    <message>
        <source>Looked at</source>
        <translation>Obejrzano</translation>
    </message>
    <message>
        <source>Completion</source>
        <translation>Zakończenie</translation>
    </message>
    <message>
        <source>Hand-over</source>
        <translation>Przekazanie</translation>
    </message>
    <message>
        <source>Advice</source>
        <translation>Porada</translation>
    </message>
    <message>
        <source>serial number %1</source>
        <translation>numer seryjny %1</translation>
    </message>
    <message>
        <source>What was wrong</source>
        <translation>Co było nie w porządku</translation>
    </message>
    <message>
        <source>Whether gas is escaping: not entered.</source>
        <translation>Czy gaz się ulatnia: nie podano.</translation>
    </message>
    <message>
        <source>Gas was escaping.</source>
        <translation>Gaz się ulatniał.</translation>
    </message>
    <message>
        <source>Gas is escaping.</source>
        <translation>Gaz się ulatnia.</translation>
    </message>
    <message>
        <source>No gas was escaping.</source>
        <translation>Gaz się nie ulatniał.</translation>
    </message>
    <message>
        <source>No gas is escaping.</source>
        <translation>Gaz się nie ulatnia.</translation>
    </message>
    <message>
        <source>Whether gas was escaping: not entered.</source>
        <translation>Czy gaz się ulatniał: nie podano.</translation>
    </message>
    <message>
        <source>an engineer who is not named</source>
        <translation>inżynier, którego nie wskazano</translation>
    </message>
    <message>
        <source>%1 (card %2)</source>
        <translation>%1 (karta %2)</translation>
    </message>
    <message>
        <source>Put right</source>
        <translation>Naprawiono</translation>
    </message>
    <message>
        <source>On %1, by %2</source>
        <translation>Dnia %1, wykonawca: %2</translation>
    </message>
    <message>
        <source>Made safe</source>
        <translation>Zabezpieczono</translation>
    </message>
    <message>
        <source>NOT made safe</source>
        <translation>NIE zabezpieczono</translation>
    </message>
    <message>
        <source>REFUSED</source>
        <translation>ODMÓWIONO</translation>
    </message>
    <message>
        <source>Refused by: %1</source>
        <translation>Odmówił(a): %1</translation>
    </message>
    <message>
        <source>In their words: %1</source>
        <translation>Własnymi słowami: %1</translation>
    </message>
    <message>
        <source>The supply was left: %1</source>
        <translation>Dopływ gazu pozostawiono: %1</translation>
    </message>
    <message>
        <source>fixed, no. %1</source>
        <translation>umieszczono, nr %1</translation>
    </message>
    <message>
        <source>fixed</source>
        <translation>umieszczono</translation>
    </message>
    <message>
        <source>none fixed</source>
        <translation>nie umieszczono</translation>
    </message>
    <message>
        <source>Warning label</source>
        <translation>Etykieta ostrzegawcza</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>o godzinie %1</translation>
    </message>
    <message>
        <source>reference %1</source>
        <translation>numer zgłoszenia %1</translation>
    </message>
    <message>
        <source>Also told</source>
        <translation>Powiadomiono też</translation>
    </message>
    <message>
        <source>This notice</source>
        <translation>To ostrzeżenie</translation>
    </message>
    <message>
        <source>nobody signed for it, a copy was left</source>
        <translation>nikt nie podpisał odbioru, pozostawiono kopię</translation>
    </message>
    <message>
        <source>Received by: %1</source>
        <translation>Odebrał(a): %1</translation>
    </message>
    <message>
        <source>Copy left: %1</source>
        <translation>Kopię pozostawiono: %1</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Co stwierdzono</translation>
    </message>
    <message>
        <source>What was found: %1</source>
        <translation>Co stwierdzono: %1</translation>
    </message>
    <message>
        <source>Work needed</source>
        <translation>Potrzebne prace</translation>
    </message>
    <message>
        <source>PUT RIGHT</source>
        <translation>NAPRAWIONO</translation>
    </message>
    <message>
        <source>It was: %1</source>
        <translation>Było: %1</translation>
    </message>
    <message>
        <source>It was found dangerous, and put right at once, on %1, by %2. Below stands what was done. Keep this notice.</source>
        <translation>Stwierdzono, że jest niebezpieczne, i naprawiono od razu, dnia %1, wykonawca: %2. Poniżej opisano, co zrobiono. Proszę zachować to ostrzeżenie.</translation>
    </message>
    <message>
        <source>If it is used or left connected, it is an immediate danger to life or property.</source>
        <translation>Używane lub pozostawione podłączone stanowi bezpośrednie zagrożenie dla życia lub mienia.</translation>
    </message>
    <message>
        <source>It has a fault that could endanger life or property, even if nothing else fails.</source>
        <translation>Ma usterkę, która może zagrozić życiu lub mieniu, nawet jeśli nic innego nie zawiedzie.</translation>
    </message>
    <message>
        <source>DANGER – DO NOT USE</source>
        <translation>NIEBEZPIECZEŃSTWO – NIE UŻYWAĆ</translation>
    </message>
    <message>
        <source>What not to do</source>
        <translation>Czego nie robić</translation>
    </message>
    <message>
        <source>Do not use it, turn it on or remove the label until a registered engineer has put it right.</source>
        <translation>Nie używać, nie włączać i nie zdejmować etykiety, dopóki zarejestrowany inżynier tego nie naprawi.</translation>
    </message>
    <message>
        <source>Whoever uses it, or lets it be used, may commit an offence: Gas Safety (Installation and Use) Regulations 1998, regulation 34.</source>
        <translation>Kto tego używa lub pozwala używać, może popełnić przestępstwo: Gas Safety (Installation and Use) Regulations 1998, regulation 34 (przepis 34).</translation>
    </message>
    <message>
        <source>An unsafe situation was found.</source>
        <translation>Stwierdzono sytuację niebezpieczną.</translation>
    </message>
    <message>
        <source>No unsafe situation was found.</source>
        <translation>Nie stwierdzono sytuacji niebezpiecznej.</translation>
    </message>
    <message>
        <source>The gas was left</source>
        <translation>Gaz pozostawiono</translation>
    </message>
    <message>
        <source>Carbon monoxide in the air</source>
        <translation>Tlenek węgla w powietrzu</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Miejsce</translation>
    </message>
    <message>
        <source>After</source>
        <translation>Po</translation>
    </message>
    <message>
        <source>— no reading entered</source>
        <translation>— nie podano odczytu</translation>
    </message>
    <message>
        <source>Seen in the rooms</source>
        <translation>Zauważono w pomieszczeniach</translation>
    </message>
    <message>
        <source>The call</source>
        <translation>Wezwanie</translation>
    </message>
    <message>
        <source>The pipework was found in order by every test that was made.</source>
        <translation>W każdym wykonanym badaniu stwierdzono, że rury są w porządku.</translation>
    </message>
    <message>
        <source>The pipework was not found in order: see the findings.</source>
        <translation>Nie stwierdzono, że rury są w porządku: patrz ustalenia.</translation>
    </message>
    <message>
        <source>Something is to be looked at again: see the findings.</source>
        <translation>Coś trzeba sprawdzić ponownie: patrz ustalenia.</translation>
    </message>
    <message>
        <source>No verdict: see the findings for what is missing.</source>
        <translation>Bez orzeczenia: czego brakuje, podano w ustaleniach.</translation>
    </message>
    <message>
        <source>Strength test</source>
        <translation>Badanie wytrzymałości</translation>
    </message>
    <message>
        <source>Tightness test</source>
        <translation>Badanie szczelności</translation>
    </message>
    <message>
        <source>Lasted</source>
        <translation>Trwało</translation>
    </message>
    <message>
        <source>At the start</source>
        <translation>Na początku</translation>
    </message>
    <message>
        <source>At the end</source>
        <translation>Na końcu</translation>
    </message>
    <message>
        <source>— not made</source>
        <translation>— nie wykonano</translation>
    </message>
    <message>
        <source>The pipework</source>
        <translation>Rury</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Wytrzymałość</translation>
    </message>
    <message>
        <source>A dangerous gas fitting, reported to HSE.</source>
        <translation>Niebezpieczny element instalacji gazowej, zgłoszony do HSE.</translation>
    </message>
    <message>
        <source>A dangerous gas fitting: to be reported to HSE within 14 days.</source>
        <translation>Niebezpieczny element instalacji gazowej: zgłosić do HSE w ciągu 14 dni.</translation>
    </message>
    <message>
        <source>The fitting</source>
        <translation>Element instalacji</translation>
    </message>
    <message>
        <source>The fitting: %1</source>
        <translation>Element instalacji: %1</translation>
    </message>
    <message>
        <source>Reported on</source>
        <translation>Zgłoszono dnia</translation>
    </message>
    <message>
        <source>not yet reported when this was issued</source>
        <translation>jeszcze niezgłoszone w chwili wystawienia</translation>
    </message>
    <message>
        <source>Reference of the report: %1</source>
        <translation>Numer zgłoszenia: %1</translation>
    </message>
    <message>
        <source>Installed or serviced by</source>
        <translation>Zamontował lub serwisował</translation>
    </message>
    <message>
        <source>What was installed</source>
        <translation>Co zamontowano</translation>
    </message>
    <message>
        <source>The work</source>
        <translation>Praca</translation>
    </message>
    <message>
        <source>in date</source>
        <translation>ważne</translation>
    </message>
    <message>
        <source>due within 30 days</source>
        <translation>termin w ciągu 30 dni</translation>
    </message>
    <message>
        <source>PAST ITS DATE</source>
        <translation>PO TERMINIE</translation>
    </message>
    <message>
        <source>no date known</source>
        <translation>data nieznana</translation>
    </message>
    <message>
        <source>fluid gauge, none kept</source>
        <translation>manometr cieczowy, nie prowadzi się</translation>
    </message>
    <message>
        <source>Certificate</source>
        <translation>Świadectwo</translation>
    </message>
    <message>
        <source>Calibrated</source>
        <translation>Wzorcowano</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Termin</translation>
    </message>
    <message>
        <source>On the day</source>
        <translation>Tego dnia</translation>
    </message>
    <message>
        <source>Kept by</source>
        <translation>Przechowuje</translation>
    </message>
    <message>
        <source>Registration number</source>
        <translation>Numer rejestracyjny</translation>
    </message>
    <message>
        <source>State of</source>
        <translation>Stan na dzień</translation>
    </message>
    <message>
        <source>Who reports</source>
        <translation>Kto zgłasza</translation>
    </message>
    <message>
        <source>The business reports, as soon as it knows enough to decide that the fitting is or could have been dangerous by its design, construction, manner of installation, modification or servicing. A copy of the report is kept with this entry.</source>
        <translation>Zgłasza firma, gdy tylko wie dość, aby uznać, że element instalacji jest lub mógł być niebezpieczny ze względu na projekt, konstrukcję, sposób montażu, przeróbkę lub serwisowanie. Kopię zgłoszenia przechowuje się z tym wpisem.</translation>
    </message>
    <message>
        <source>Notified</source>
        <translation>Zgłoszono</translation>
    </message>
    <message>
        <source>not yet entered</source>
        <translation>jeszcze nie podano</translation>
    </message>
    <message>
        <source>Past their date</source>
        <translation>Po terminie</translation>
    </message>
    <message>
        <source>Due within 30 days</source>
        <translation>Termin w ciągu 30 dni</translation>
    </message>
    <message>
        <source>Without a date</source>
        <translation>Bez daty</translation>
    </message>
    <message>
        <source>no such day in this country’s law</source>
        <translation>prawo tego kraju nie zna takiego terminu</translation>
    </message>
    <message>
        <source>the day it runs from is not entered</source>
        <translation>nie podano dnia, od którego biegnie termin</translation>
    </message>
    <message>
        <source>Certificate to the occupier, notice to the council</source>
        <translation>Świadectwo dla użytkownika, zgłoszenie do gminy</translation>
    </message>
    <message>
        <source>Operating and maintaining information to the owner</source>
        <translation>Informacje o obsłudze i konserwacji dla właściciela</translation>
    </message>
    <message>
        <source>By when</source>
        <translation>Do kiedy</translation>
    </message>
    <message>
        <source>30 days after completion on %1 (regulation 20).</source>
        <translation>30 dni po zakończeniu dnia %1 (regulation 20, przepis 20).</translation>
    </message>
    <message>
        <source>5 days after completion on %1 (regulation 40).</source>
        <translation>5 dni po zakończeniu dnia %1 (regulation 40, przepis 40).</translation>
    </message>
    <message>
        <source>Report to HSE by</source>
        <translation>Zgłosić do HSE do</translation>
    </message>
    <message>
        <source>14 days after it was known, %1.</source>
        <translation>14 dni od powzięcia wiadomości, %1.</translation>
    </message>
    <message>
        <source>— nobody with an address</source>
        <translation>— nikogo z adresem</translation>
    </message>
    <message>
        <source>Our work at %1</source>
        <translation>Nasza praca pod adresem %1</translation>
    </message>
    <message>
        <source>Gas safety check at %1</source>
        <translation>Kontrola bezpieczeństwa gazowego pod adresem %1</translation>
    </message>
    <message>
        <source>Signed for %1</source>
        <translation>Podpisano w imieniu %1</translation>
    </message>
    <message>
        <source>Dear %1,</source>
        <translation>Szanowni Państwo, %1,</translation>
    </message>
    <message>
        <source>Our records show that the yearly check of the gas appliances at %2 is due by %6.</source>
        <translation>Z naszych zapisów wynika, że termin rocznej kontroli urządzeń gazowych pod adresem %2 mija dnia %6.</translation>
    </message>
    <message>
        <source>Our records show that the yearly check of the gas appliances at %2 was due by %6. We know of none since.</source>
        <translation>Z naszych zapisów wynika, że termin rocznej kontroli urządzeń gazowych pod adresem %2 minął dnia %6. Nie wiemy o żadnej późniejszej kontroli.</translation>
    </message>
    <message>
        <source>Our records show that the yearly check of the gas appliances at %2 falls due.</source>
        <translation>Z naszych zapisów wynika, że zbliża się termin rocznej kontroli urządzeń gazowych pod adresem %2.</translation>
    </message>
    <message>
        <source>Please ring us on %3 to agree a day. If somebody else has made the check, or the address is no longer yours, tell us, and we will remind you no more.</source>
        <translation>Prosimy o telefon pod numer %3, aby uzgodnić dzień. Jeśli kontrolę wykonał kto inny albo adres już Państwa nie dotyczy, prosimy o wiadomość, a nie będziemy więcej przypominać.</translation>
    </message>
    <message>
        <source>Yours faithfully,</source>
        <translation>Z poważaniem</translation>
    </message>
    <message>
        <source>On %4 we came to %2 to check the gas appliances and could not get in.</source>
        <translation>Dnia %4 przyszliśmy pod adres %2, aby skontrolować urządzenia gazowe, i nie mogliśmy wejść.</translation>
    </message>
    <message>
        <source>The check is there for the safety of everybody who lives in the house. Please ring us on %3 to agree another day.</source>
        <translation>Kontrola służy bezpieczeństwu wszystkich mieszkańców domu. Prosimy o telefon pod numer %3, aby uzgodnić inny dzień.</translation>
    </message>
    <message>
        <source>With this letter comes the record of our work at %2 on %5.</source>
        <translation>Do tego listu dołączamy protokół naszej pracy pod adresem %2 dnia %5.</translation>
    </message>
    <message>
        <source>Please read first what it says of the outcome and of anything that is to be done, keep it with the papers of the premises, and ring us on %3 about anything that is not clear.</source>
        <translation>Prosimy najpierw przeczytać, co mówi o wyniku i o tym, co trzeba zrobić, przechowywać go z dokumentami obiektu i zadzwonić pod numer %3, jeśli coś jest niejasne.</translation>
    </message>
    <message>
        <source>Test</source>
        <translation>Badanie</translation>
    </message>
    <message>
        <source>The visit</source>
        <translation>Wizyta</translation>
    </message>
    <message>
        <source>After (min)</source>
        <translation>Po (min)</translation>
    </message>
    <message>
        <source>CO (ppm)</source>
        <translation>CO (ppm)</translation>
    </message>
    <message>
        <source>Length (m)</source>
        <translation>Długość (m)</translation>
    </message>
    <message>
        <source>%1 %2 of %3</source>
        <translation>%1 %2 z %3</translation>
    </message>
    <message>
        <source>Outcome as the engineer sees it</source>
        <translation>Wynik według inżyniera</translation>
    </message>
    <message>
        <source>Name, card number and date</source>
        <translation>Nazwisko, numer karty i data</translation>
    </message>
    <message>
        <source>Name and date</source>
        <translation>Nazwisko i data</translation>
    </message>
    <message>
        <source>Received and understood by, or copy left at</source>
        <translation>Odebrał(a) i zrozumiał(a) albo kopię pozostawiono w</translation>
    </message>
    <message>
        <source>Received by (not required)</source>
        <translation>Odebrał(a) (niewymagane)</translation>
    </message>
    <message>
        <source>Blank, to be filled in by pen. Typed in later, the record gets a number of its own; this blank’s number is its reference.</source>
        <translation>Formularz do wypełnienia piórem. Po późniejszym wpisaniu protokół otrzymuje własny numer; numer tego formularza jest jego oznaczeniem.</translation>
    </message>
    <message>
        <source>the LPG supplier&apos;s emergency number, on the cylinder or tank</source>
        <translation>numer alarmowy dostawcy LPG, na butli lub zbiorniku</translation>
    </message>
    <message>
        <source>the gas emergency number on the meter or your supplier&apos;s bill</source>
        <translation>gazowy numer alarmowy na gazomierzu lub na rachunku dostawcy</translation>
    </message>
    <message>
        <source>%1 (gas emergency service)</source>
        <translation>%1 (pogotowie gazowe)</translation>
    </message>
    <message>
        <source>%1, or the number on the cylinder or tank where it is another</source>
        <translation>%1 albo numer na butli lub zbiorniku, jeśli jest inny</translation>
    </message>
    <message>
        <source>%1, or the gas emergency number on the meter where it is another</source>
        <translation>%1 albo gazowy numer alarmowy na gazomierzu, jeśli jest inny</translation>
    </message>
    <message>
        <source>%1 first, and after that %2</source>
        <translation>najpierw %1, a potem %2</translation>
    </message>
    <message>
        <source>the LPG supplier&apos;s number</source>
        <translation>numer dostawcy LPG</translation>
    </message>
    <message>
        <source>the number on the meter</source>
        <translation>numer na gazomierzu</translation>
    </message>
    <message>
        <source>%1 or the number on the tank</source>
        <translation>%1 lub numer na zbiorniku</translation>
    </message>
    <message>
        <source>%1 or the number on the meter</source>
        <translation>%1 lub numer na gazomierzu</translation>
    </message>
    <message>
        <source>%1, then %2</source>
        <translation>%1, potem %2</translation>
    </message>
    <message>
        <source>Close the emergency control valve at the meter, if you can reach it safely.</source>
        <translation>Zamknąć awaryjny zawór odcinający przy gazomierzu, jeśli można do niego bezpiecznie dojść.</translation>
    </message>
    <message>
        <source>Close the emergency control valve, if you can reach it safely.</source>
        <translation>Zamknąć awaryjny zawór odcinający, jeśli można do niego bezpiecznie dojść.</translation>
    </message>
    <message>
        <source>Close the valve on the cylinder or tank, if you can reach it safely.</source>
        <translation>Zamknąć zawór na butli lub zbiorniku, jeśli można do niego bezpiecznie dojść.</translation>
    </message>
    <message>
        <source>No flames, no smoking. Switch nothing on or off: no light, no bell, no telephone inside.</source>
        <translation>Żadnych płomieni, nie palić. Niczego nie włączać ani nie wyłączać: żadnego światła, dzwonka ani telefonu wewnątrz.</translation>
    </message>
    <message>
        <source>Open doors and windows on the way out. Get everybody out.</source>
        <translation>Po drodze na zewnątrz otworzyć drzwi i okna. Wyprowadzić wszystkich.</translation>
    </message>
    <message>
        <source>LPG sinks: keep out of cellars, drains and low places.</source>
        <translation>LPG opada: nie wchodzić do piwnic, kanałów i zagłębień.</translation>
    </message>
    <message>
        <source>Never enter a cellar that smells of gas, not even to reach the valve.</source>
        <translation>Nigdy nie wchodzić do piwnicy, w której czuć gaz, nawet po to, by dojść do zaworu.</translation>
    </message>
    <message>
        <source>From outside and away from the building, ring %1.</source>
        <translation>Z zewnątrz, z dala od budynku, zadzwonić: %1.</translation>
    </message>
    <message>
        <source>Keep everybody out until it has been made safe. Fire or injury: ring 999.</source>
        <translation>Nikogo nie wpuszczać, dopóki miejsce nie zostanie zabezpieczone. Pożar lub obrażenia: dzwonić 999.</translation>
    </message>
    <message>
        <source>Keep the gas off.</source>
        <translation>Gaz ma pozostać zamknięty.</translation>
    </message>
    <message>
        <source>Trace the leak and repair it, then test again from the start.</source>
        <translation>Znaleźć nieszczelność i naprawić, a potem zbadać ponownie od początku.</translation>
    </message>
    <message>
        <source>If it can&apos;t be repaired now, make safe: isolate or disconnect what leaks and seal the ends with proper fittings.</source>
        <translation>Jeśli nie da się naprawić teraz, zabezpieczyć: odciąć lub odłączyć to, co przecieka, i zaślepić końce właściwymi kształtkami.</translation>
    </message>
    <message>
        <source>Tell the responsible person, in writing, that the gas stays off and why.</source>
        <translation>Poinformować osobę odpowiedzialną na piśmie, że gaz pozostaje zamknięty i dlaczego.</translation>
    </message>
    <message>
        <source>Only for a fault of the network or supply itself, or where it can&apos;t be made safe, ring %1.</source>
        <translation>Tylko przy usterce samej sieci lub zasilania albo gdy nie da się zabezpieczyć, zadzwonić: %1.</translation>
    </message>
    <message>
        <source>Any smell of gas: do as for an escape instead.</source>
        <translation>Jakikolwiek zapach gazu: postępować natomiast jak przy ulatnianiu się gazu.</translation>
    </message>
    <message>
        <source>Get everybody out into fresh air.</source>
        <translation>Wyprowadzić wszystkich na świeże powietrze.</translation>
    </message>
    <message>
        <source>Turn the appliances off, if you need not stay to do it.</source>
        <translation>Wyłączyć urządzenia, jeśli nie trzeba w tym celu zostawać.</translation>
    </message>
    <message>
        <source>Open doors and windows.</source>
        <translation>Otworzyć drzwi i okna.</translation>
    </message>
    <message>
        <source>Anyone unwell needs medical help at once: ring 999 and say that carbon monoxide is suspected.</source>
        <translation>Kto źle się czuje, potrzebuje natychmiast pomocy lekarskiej: zadzwonić 999 i powiedzieć, że podejrzewa się tlenek węgla.</translation>
    </message>
    <message>
        <source>Then ring %1.</source>
        <translation>Potem zadzwonić: %1.</translation>
    </message>
    <message>
        <source>Nobody goes back in, and nothing is used, until a competent engineer has found the cause.</source>
        <translation>Nikt nie wraca do środka i niczego się nie używa, dopóki kompetentny inżynier nie znajdzie przyczyny.</translation>
    </message>
    <message>
        <source>Smell of gas, or an escape</source>
        <translation>Zapach gazu lub ulatnianie się gazu</translation>
    </message>
    <message>
        <source>The test failed, and there is no smell</source>
        <translation>Badanie nie spełniło wymagań i nie ma zapachu</translation>
    </message>
    <message>
        <source>Carbon monoxide or fumes in a room</source>
        <translation>Tlenek węgla lub spaliny w pomieszczeniu</translation>
    </message>
    <message>
        <source>For competent, registered engineers; the standard and the maker&apos;s instructions come first. Smell of gas: no flames, no switches; close the cylinder or tank; open up; out; ring %1.</source>
        <translation>Dla kompetentnych, zarejestrowanych inżynierów; pierwszeństwo mają norma i instrukcje producenta. Zapach gazu: bez płomieni, bez przełączników; zamknąć butlę lub zbiornik; otworzyć drzwi i okna; wyjść; dzwonić: %1.</translation>
    </message>
    <message>
        <source>For competent, registered engineers; the standard and the maker&apos;s instructions come first. Smell of gas: no flames, no switches; close the control valve; open up; out; ring %1.</source>
        <translation>Dla kompetentnych, zarejestrowanych inżynierów; pierwszeństwo mają norma i instrukcje producenta. Zapach gazu: bez płomieni, bez przełączników; zamknąć zawór odcinający; otworzyć drzwi i okna; wyjść; dzwonić: %1.</translation>
    </message>
    <message>
        <source>as a file</source>
        <translation>jako plik</translation>
    </message>
    <message>
        <source>by mail</source>
        <translation>pocztą elektroniczną</translation>
    </message>
    <message>
        <source>printed</source>
        <translation>wydrukowano</translation>
    </message>
    <message>
        <source>printed, marked copy</source>
        <translation>wydrukowano, oznaczono jako kopię</translation>
    </message>
    <message>
        <source>shown</source>
        <translation>pokazano</translation>
    </message>
    <message>
        <source>text message copied</source>
        <translation>skopiowano wiadomość</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nic</translation>
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
        <translation>Dzień dobry,

w załączniku nasz protokół %1 z dnia %2:
%3, %4.

Mówi: %5

Prosimy go zachować.</translation>
    </message>
    <message>
        <source>It takes the place of the one that you have (%1). Please don&apos;t go by that any more.</source>
        <translation>Zastępuje ten, który Państwo mają (%1). Prosimy już się nim nie kierować.</translation>
    </message>
    <message>
        <source>%1, %2: %3 Record %4 of %5. %6</source>
        <translation>%1, %2: %3 Protokół %4 z dnia %5. %6</translation>
    </message>
    <message>
        <source>nobody named</source>
        <translation>nikogo nie wskazano</translation>
    </message>
    <message>
        <source>%1: %2 (%4)</source>
        <translation>%1: %2 (%4)</translation>
    </message>
    <message>
        <source>%1: %2, to %3 (%4)</source>
        <translation>%1: %2, do %3 (%4)</translation>
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
        <translation>Bezpieczne w dotyku</translation>
    </message>
    <message>
        <source>Smell on arrival</source>
        <translation>Zapach po przybyciu</translation>
    </message>
    <message>
        <source>Scope of the standard</source>
        <translation>Zakres normy</translation>
    </message>
    <message>
        <source>Edition</source>
        <translation>Wydanie</translation>
    </message>
    <message>
        <source>Gauge zero</source>
        <translation>Zero manometru</translation>
    </message>
    <message>
        <source>Gauge calibration</source>
        <translation>Wzorcowanie manometru</translation>
    </message>
    <message>
        <source>Gauge accuracy</source>
        <translation>Dokładność manometru</translation>
    </message>
    <message>
        <source>Test pressure</source>
        <translation>Ciśnienie próbne</translation>
    </message>
    <message>
        <source>Test time</source>
        <translation>Czas badania</translation>
    </message>
    <message>
        <source>Drop by volume</source>
        <translation>Spadek według objętości</translation>
    </message>
    <message>
        <source>Two displays</source>
        <translation>Dwa wyświetlacze</translation>
    </message>
    <message>
        <source>Joints proved and wiped</source>
        <translation>Połączenia sprawdzone i wytarte</translation>
    </message>
    <message>
        <source>Standing pressure</source>
        <translation>Ciśnienie statyczne</translation>
    </message>
    <message>
        <source>Working pressure</source>
        <translation>Ciśnienie robocze</translation>
    </message>
    <message>
        <source>Wobbe index of the network gas</source>
        <translation>Liczba Wobbego gazu sieciowego</translation>
    </message>
    <message>
        <source>Relative density of the network gas</source>
        <translation>Gęstość względna gazu sieciowego</translation>
    </message>
    <message>
        <source>Calorific value</source>
        <translation>Wartość kaloryczna</translation>
    </message>
    <message>
        <source>Pressure drop at the largest flow</source>
        <translation>Spadek ciśnienia przy największym przepływie</translation>
    </message>
    <message>
        <source>Pressure drop at the measured flow</source>
        <translation>Spadek ciśnienia przy zmierzonym przepływie</translation>
    </message>
    <message>
        <source>Purge volume, larger installation</source>
        <translation>Objętość odpowietrzania, większa instalacja</translation>
    </message>
    <message>
        <source>Purge flow</source>
        <translation>Przepływ odpowietrzania</translation>
    </message>
    <message>
        <source>End of the purge</source>
        <translation>Koniec odpowietrzania</translation>
    </message>
    <message>
        <source>Standard that applies</source>
        <translation>Właściwa norma</translation>
    </message>
    <message>
        <source>Readable movement of the gauge</source>
        <translation>Odczytywalna zmiana manometru</translation>
    </message>
    <message>
        <source>Longest test on this gauge</source>
        <translation>Najdłuższe badanie tym manometrem</translation>
    </message>
    <message>
        <source>Leak permitted</source>
        <translation>Dopuszczalny wyciek</translation>
    </message>
    <message>
        <source>Strength test pressure</source>
        <translation>Ciśnienie badania wytrzymałości</translation>
    </message>
    <message>
        <source>Strength test times</source>
        <translation>Czasy badania wytrzymałości</translation>
    </message>
    <message>
        <source>Drop from meter to appliance</source>
        <translation>Spadek od gazomierza do urządzenia</translation>
    </message>
    <message>
        <source>Working pressure at the appliance</source>
        <translation>Ciśnienie robocze przy urządzeniu</translation>
    </message>
    <message>
        <source>Burner pressure</source>
        <translation>Ciśnienie na palniku</translation>
    </message>
    <message>
        <source>Average pressure at the meter</source>
        <translation>Średnie ciśnienie przy gazomierzu</translation>
    </message>
    <message>
        <source>Hot water output</source>
        <translation>Moc ciepłej wody</translation>
    </message>
    <message>
        <source>Hot water against heat input</source>
        <translation>Ciepła woda a obciążenie cieplne</translation>
    </message>
    <message>
        <source>Examinations after work, regulation 26(9)</source>
        <translation>Sprawdzenia po pracy, regulation 26(9) (przepis 26(9))</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio at maximum rate</source>
        <translation>Stosunek CO/CO₂ przy największej mocy</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio at minimum rate</source>
        <translation>Stosunek CO/CO₂ przy najmniejszej mocy</translation>
    </message>
    <message>
        <source>CO at maximum rate</source>
        <translation>CO przy największej mocy</translation>
    </message>
    <message>
        <source>CO at minimum rate</source>
        <translation>CO przy najmniejszej mocy</translation>
    </message>
    <message>
        <source>CO₂ at maximum rate</source>
        <translation>CO₂ przy największej mocy</translation>
    </message>
    <message>
        <source>CO₂ at minimum rate</source>
        <translation>CO₂ przy najmniejszej mocy</translation>
    </message>
    <message>
        <source>O₂ at the air inlet</source>
        <translation>O₂ na wlocie powietrza</translation>
    </message>
    <message>
        <source>CO₂ at the air inlet</source>
        <translation>CO₂ na wlocie powietrza</translation>
    </message>
    <message>
        <source>O₂ and CO₂ belong together</source>
        <translation>O₂ i CO₂ do siebie pasują</translation>
    </message>
    <message>
        <source>O₂ and CO₂ belong together, lowest rate</source>
        <translation>O₂ i CO₂ do siebie pasują, najmniejsza moc</translation>
    </message>
    <message>
        <source>Ratio as printed and as worked out</source>
        <translation>Stosunek wydrukowany i obliczony</translation>
    </message>
    <message>
        <source>Scope of the ventilation standard</source>
        <translation>Zakres normy wentylacji</translation>
    </message>
    <message>
        <source>Free area of the vents</source>
        <translation>Wolny przekrój otworów</translation>
    </message>
    <message>
        <source>Vents at high level</source>
        <translation>Otwory u góry</translation>
    </message>
    <message>
        <source>Vents at low level</source>
        <translation>Otwory u dołu</translation>
    </message>
    <message>
        <source>Openable window or door</source>
        <translation>Otwierane okno lub drzwi</translation>
    </message>
    <message>
        <source>Appliance allowed in this room</source>
        <translation>Urządzenie dopuszczone w tym pomieszczeniu</translation>
    </message>
    <message>
        <source>State of the vents</source>
        <translation>Stan otworów</translation>
    </message>
    <message>
        <source>Cooker in a basement</source>
        <translation>Kuchenka w piwnicy</translation>
    </message>
    <message>
        <source>Boiler room temperature</source>
        <translation>Temperatura kotłowni</translation>
    </message>
    <message>
        <source>Carbon monoxide outdoors</source>
        <translation>Tlenek węgla na zewnątrz</translation>
    </message>
    <message>
        <source>Carbon monoxide in the room</source>
        <translation>Tlenek węgla w pomieszczeniu</translation>
    </message>
    <message>
        <source>Carbon monoxide, 15 minutes</source>
        <translation>Tlenek węgla, 15 minut</translation>
    </message>
    <message>
        <source>Carbon monoxide, 8 hours</source>
        <translation>Tlenek węgla, 8 godzin</translation>
    </message>
    <message>
        <source>How the room was sampled</source>
        <translation>Jak pobrano próbki w pomieszczeniu</translation>
    </message>
    <message>
        <source>What the carbon monoxide could do to the blood</source>
        <translation>Co tlenek węgla mógłby zrobić we krwi</translation>
    </message>
    <message>
        <source>Next safety check</source>
        <translation>Następna kontrola bezpieczeństwa</translation>
    </message>
    <message>
        <source>Whether the check was in time</source>
        <translation>Czy kontrola była w terminie</translation>
    </message>
    <message>
        <source>Engineer&apos;s card</source>
        <translation>Karta inżyniera</translation>
    </message>
    <message>
        <source>Engineer&apos;s categories</source>
        <translation>Kategorie inżyniera</translation>
    </message>
    <message>
        <source>Analyser&apos;s calibration</source>
        <translation>Wzorcowanie analizatora</translation>
    </message>
    <message>
        <source>Calibration runs out today, %1. It still counts for this test.</source>
        <translation>Wzorcowanie traci ważność dzisiaj, %1. Dla tego badania jeszcze się liczy.</translation>
    </message>
    <message numerus="yes">
        <source>Calibration runs out in %n day(s), on %1. It counts for this test.</source>
        <translation>
            <numerusform>Wzorcowanie traci ważność za %n dzień, %1. Dla tego badania się liczy.</numerusform>
            <numerusform>Wzorcowanie traci ważność za %n dni, %1. Dla tego badania się liczy.</numerusform>
            <numerusform>Wzorcowanie traci ważność za %n dni, %1. Dla tego badania się liczy.</numerusform>
        </translation>
    </message>
    <message>
        <source>Maker&apos;s instructions</source>
        <translation>Instrukcje producenta</translation>
    </message>
    <message>
        <source>published</source>
        <translation>opublikowane</translation>
    </message>
    <message>
        <source>read second-hand</source>
        <translation>z drugiej ręki</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>z pamięci</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>powszechna praktyka</translation>
    </message>
    <message>
        <source>confirmed by the firm</source>
        <translation>potwierdzone przez firmę</translation>
    </message>
    <message>
        <source>the maker&apos;s figure</source>
        <translation>wartość producenta</translation>
    </message>
    <message>
        <source>at most</source>
        <translation>co najwyżej</translation>
    </message>
    <message>
        <source>below</source>
        <translation>poniżej</translation>
    </message>
    <message>
        <source>at least</source>
        <translation>co najmniej</translation>
    </message>
    <message>
        <source>within</source>
        <translation>w przedziale</translation>
    </message>
    <message>
        <source>exactly</source>
        <translation>dokładnie</translation>
    </message>
    <message>
        <source>as given</source>
        <translation>jak podano</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>co najwyżej %1</translation>
    </message>
    <message>
        <source>below %1</source>
        <translation>poniżej %1</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>co najmniej %1</translation>
    </message>
    <message>
        <source>within %1</source>
        <translation>w przedziale %1</translation>
    </message>
    <message>
        <source>exactly %1</source>
        <translation>dokładnie %1</translation>
    </message>
    <message>
        <source>%1</source>
        <translation>%1</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 do %2</translation>
    </message>
    <message>
        <source>up to %1: %2</source>
        <translation>do %1: %2</translation>
    </message>
    <message>
        <source>confirmed by %1</source>
        <translation>potwierdzone przez: %1</translation>
    </message>
    <message>
        <source>confirmed by %1, %2</source>
        <translation>potwierdzone przez: %1, %2</translation>
    </message>
    <message>
        <source>any edition</source>
        <translation>dowolne wydanie</translation>
    </message>
    <message>
        <source>%1 (band: %2)</source>
        <translation>%1 (przedział: %2)</translation>
    </message>
    <message>
        <source>%1 (limit: %2)</source>
        <translation>%1 (granica: %2)</translation>
    </message>
    <message>
        <source>COPY</source>
        <translation>KOPIA</translation>
    </message>
    <message>
        <source>SUPERSEDED</source>
        <translation>ZASTĄPIONY</translation>
    </message>
    <message>
        <source>VOID</source>
        <translation>UNIEWAŻNIONY</translation>
    </message>
    <message>
        <source>Replaces revision %1 of %2: %3</source>
        <translation>Zastępuje wersję %1 protokołu %2: %3</translation>
    </message>
    <message>
        <source>A reading that this needs has not been entered.</source>
        <translation>Nie podano odczytu, który jest tu potrzebny.</translation>
    </message>
    <message>
        <source>What was typed can&apos;t be read as a number. It is kept: put it right to have it judged.</source>
        <translation>Wpisu nie da się odczytać jako liczby. Pozostaje zachowany: trzeba go poprawić, aby można było ocenić.</translation>
    </message>
    <message>
        <source>The rule book has no limit for this. Enter it there from your own copy of the standard.</source>
        <translation>Księga reguł nie ma tu wartości granicznej. Trzeba ją tam wpisać z własnego egzemplarza normy.</translation>
    </message>
    <message>
        <source>This limit was written down from memory of the standard: check it against your copy, then confirm it in the rule book.</source>
        <translation>Tę wartość graniczną zapisano z pamięci normy: sprawdzić z własnym egzemplarzem, a potem potwierdzić w księdze reguł.</translation>
    </message>
    <message>
        <source>This limit was read in training notes or the trade press, not in the standard: check it against your copy, then confirm it in the rule book.</source>
        <translation>Tę wartość graniczną przeczytano w materiałach szkoleniowych lub prasie branżowej, nie w normie: sprawdzić z własnym egzemplarzem, a potem potwierdzić w księdze reguł.</translation>
    </message>
    <message>
        <source>This figure is a habit of the trade and stands in no standard that was read: it advises and decides nothing. Confirm it in the rule book if your firm goes by it.</source>
        <translation>Ta wartość to zwyczaj branży i nie ma jej w żadnej przeczytanej normie: doradza i o niczym nie rozstrzyga. Potwierdzić ją w księdze reguł, jeśli firma się nią kieruje.</translation>
    </message>
    <message>
        <source>%1 lies outside %2 to %3.</source>
        <translation>%1 leży poza przedziałem %2 do %3.</translation>
    </message>
    <message>
        <source>%1 may not judge a test made on %2. Choose the edition that is in force on that day.</source>
        <translation>%1 nie może oceniać badania wykonanego dnia %2. Wybrać wydanie obowiązujące w tym dniu.</translation>
    </message>
    <message>
        <source>Edition 3 and Edition 4 may both judge on this day: say which one you tested to.</source>
        <translation>W tym dniu mogą oceniać zarówno wydanie 3, jak i wydanie 4: podać, według którego badano.</translation>
    </message>
    <message>
        <source>Judged by %1, in force on the day of the test.</source>
        <translation>Oceniono według %1, obowiązującego w dniu badania.</translation>
    </message>
    <message>
        <source>The exposed metal pipe was swept with a voltage detector: safe to touch.</source>
        <translation>Odsłoniętą rurę metalową sprawdzono wskaźnikiem napięcia: bezpieczna w dotyku.</translation>
    </message>
    <message>
        <source>Voltage was found on the pipe. Keep off it and warn the people there; have it made safe by a competent electrician before going on.</source>
        <translation>Na rurze wykryto napięcie. Nie dotykać jej i ostrzec obecnych; przed dalszą pracą musi ją zabezpieczyć kompetentny elektryk.</translation>
    </message>
    <message>
        <source>The pipe was not checked for voltage. Sweep the exposed metal pipe with a no-contact detector before touching it.</source>
        <translation>Rury nie sprawdzono pod kątem napięcia. Przed dotknięciem sprawdzić odsłoniętą rurę metalową wskaźnikiem bezdotykowym.</translation>
    </message>
    <message>
        <source>No open ends were seen.</source>
        <translation>Nie zauważono otwartych końców.</translation>
    </message>
    <message>
        <source>An open end was found. Seal it with the proper fitting before any pressure goes on.</source>
        <translation>Znaleziono otwarty koniec. Zaślepić go właściwą kształtką, zanim poda się jakiekolwiek ciśnienie.</translation>
    </message>
    <message>
        <source>An open end was found and sealed before the test.</source>
        <translation>Znaleziono otwarty koniec i zaślepiono go przed badaniem.</translation>
    </message>
    <message>
        <source>Open ends were not looked for. Walk the installation before any pressure goes on.</source>
        <translation>Otwartych końców nie szukano. Obejść instalację, zanim poda się jakiekolwiek ciśnienie.</translation>
    </message>
    <message>
        <source>No smell of gas on arrival.</source>
        <translation>Po przybyciu nie było zapachu gazu.</translation>
    </message>
    <message>
        <source>There was a smell of gas on arrival. Deal with the escape first: press F12 for what to do.</source>
        <translation>Po przybyciu był zapach gazu. Najpierw zająć się ulatnianiem gazu: klawisz F12 pokazuje, co robić.</translation>
    </message>
    <message>
        <source>Say whether there was a smell of gas on arrival.</source>
        <translation>Podać, czy po przybyciu był zapach gazu.</translation>
    </message>
    <message>
        <source>What can be seen of the pipework is sound.</source>
        <translation>Widoczne rury są w dobrym stanie.</translation>
    </message>
    <message>
        <source>Defects were seen: weigh each one, and say in the notes what was done about it.</source>
        <translation>Zauważono wady: rozważyć każdą i podać w uwagach, co z nią zrobiono.</translation>
    </message>
    <message>
        <source>The pipework has not been looked at.</source>
        <translation>Rur nie obejrzano.</translation>
    </message>
    <message>
        <source>The gauge stood at zero before it was connected.</source>
        <translation>Manometr wskazywał zero przed podłączeniem.</translation>
    </message>
    <message>
        <source>The gauge was not zeroed before it was connected: its readings can&apos;t be relied on.</source>
        <translation>Manometru nie wyzerowano przed podłączeniem: na jego odczytach nie można polegać.</translation>
    </message>
    <message>
        <source>Say whether the gauge was zeroed before it was connected.</source>
        <translation>Podać, czy manometr wyzerowano przed podłączeniem.</translation>
    </message>
    <message>
        <source>In calibration until %1.</source>
        <translation>Wzorcowanie ważne do %1.</translation>
    </message>
    <message>
        <source>Calibration ran out on %1, before this test. Repeat the test with a gauge in calibration.</source>
        <translation>Wzorcowanie straciło ważność %1, przed tym badaniem. Powtórzyć badanie manometrem z ważnym wzorcowaniem.</translation>
    </message>
    <message>
        <source>No calibration date is kept for this gauge. Enter it under Firm, instruments.</source>
        <translation>Dla tego manometru nie zapisano daty wzorcowania. Wpisać ją w części Firma, przyrządy.</translation>
    </message>
    <message>
        <source>Say which gauge was used.</source>
        <translation>Podać, którego manometru użyto.</translation>
    </message>
    <message>
        <source>The instrument chosen is not a pressure gauge. Choose the gauge that was read.</source>
        <translation>Wybrany przyrząd nie jest manometrem. Wybrać manometr, który odczytano.</translation>
    </message>
    <message>
        <source>The gauge is accurate to %1; at most %2 is asked.</source>
        <translation>Manometr ma dokładność %1; wymagane jest co najwyżej %2.</translation>
    </message>
    <message>
        <source>The gauge is accurate to %1 only; at most %2 is asked. Use a better gauge.</source>
        <translation>Manometr ma dokładność tylko %1; wymagane jest co najwyżej %2. Użyć lepszego manometru.</translation>
    </message>
    <message>
        <source>The gauge&apos;s accuracy is not known. Enter it under Firm, instruments, from its certificate.</source>
        <translation>Dokładność manometru nie jest znana. Wpisać ją w części Firma, przyrządy, z jego świadectwa.</translation>
    </message>
    <message>
        <source>Installation volume %1: meter %2, pipes %3, fittings %4.</source>
        <translation>Objętość instalacji %1: gazomierz %2, rury %3, kształtki %4.</translation>
    </message>
    <message>
        <source>The installation volume can&apos;t be worked out yet: the meter, or a pipe&apos;s size or length, is missing.</source>
        <translation>Objętości instalacji nie da się jeszcze obliczyć: brakuje gazomierza albo średnicy lub długości rury.</translation>
    </message>
    <message>
        <source>Pipe volumes are from the trade table.</source>
        <translation>Objętości rur pochodzą z tabeli branżowej.</translation>
    </message>
    <message>
        <source>The trade table lacks a size of pipe: its volume is worked out from the tube&apos;s dimensions.</source>
        <translation>Tabela branżowa nie zawiera jednej ze średnic: objętość tej rury obliczono z jej wymiarów.</translation>
    </message>
    <message>
        <source>A volume was typed in and is used as it stands.</source>
        <translation>Objętość wpisano i używa się jej bez zmian.</translation>
    </message>
    <message>
        <source>The installation lies within the scope of the small-installation standard.</source>
        <translation>Instalacja mieści się w zakresie normy dla małych instalacji.</translation>
    </message>
    <message>
        <source>The volume of %1 is beyond this standard&apos;s %2: another standard applies.</source>
        <translation>Objętość %1 przekracza %2 z tej normy: właściwa jest inna norma.</translation>
    </message>
    <message>
        <source>The pipe of %1 is beyond this standard&apos;s %2: another standard applies.</source>
        <translation>Rura %1 przekracza %2 z tej normy: właściwa jest inna norma.</translation>
    </message>
    <message>
        <source>The meter of %1 is beyond this standard&apos;s %2: another standard applies.</source>
        <translation>Gazomierz %1 przekracza %2 z tej normy: właściwa jest inna norma.</translation>
    </message>
    <message>
        <source>The pressure of %1 is beyond this standard&apos;s %2: another standard applies.</source>
        <translation>Ciśnienie %1 przekracza %2 z tej normy: właściwa jest inna norma.</translation>
    </message>
    <message>
        <source>Whether this standard applies can&apos;t be said before meter, pipes and pressures are entered.</source>
        <translation>Nie można powiedzieć, czy ta norma jest właściwa, dopóki nie poda się gazomierza, rur i ciśnień.</translation>
    </message>
    <message>
        <source>IGE/UP/1A applies instead (natural gas, up to 1 m³, 150 mm and 40 mbar).</source>
        <translation>Zamiast niej właściwa jest IGE/UP/1A (gaz ziemny, do 1 m³, 150 mm i 40 mbar).</translation>
    </message>
    <message>
        <source>IGE/UP/1 applies instead.</source>
        <translation>Zamiast niej właściwa jest IGE/UP/1.</translation>
    </message>
    <message>
        <source>IGE/UP/1A applies instead if the installation lies within it (natural gas, up to 1 m³, 150 mm and 40 mbar), otherwise IGE/UP/1.</source>
        <translation>Zamiast niej właściwa jest IGE/UP/1A, jeśli instalacja się w niej mieści (gaz ziemny, do 1 m³, 150 mm i 40 mbar), w przeciwnym razie IGE/UP/1.</translation>
    </message>
    <message>
        <source>Edition 4&apos;s scope is not in the rule book: enter it from your own copy. Edition 3&apos;s is shown for information.</source>
        <translation>Zakresu wydania 4 nie ma w księdze reguł: wpisać go z własnego egzemplarza. Zakres wydania 3 pokazano dla informacji.</translation>
    </message>
    <message>
        <source>Say whether the whole installation was tested or a part of it.</source>
        <translation>Podać, czy badano całą instalację, czy jej część.</translation>
    </message>
    <message>
        <source>No perceptible rise from %2 (change %1).</source>
        <translation>Brak zauważalnego wzrostu, od %2 (zmiana %1).</translation>
    </message>
    <message>
        <source>The pressure rose by %1 (perceptible from %2): the valve may be letting by. Stop. Prove it with leak detection fluid; if it passes, make safe and report it. No tightness test until the valve is right.</source>
        <translation>Ciśnienie wzrosło o %1 (zauważalne od %2): zawór może przepuszczać. Przerwać. Sprawdzić go płynem do wykrywania nieszczelności; jeśli przepuszcza, zabezpieczyć i zgłosić. Żadnego badania szczelności, dopóki zawór nie będzie sprawny.</translation>
    </message>
    <message>
        <source>The pressure fell by %1, which points to a leak. Go on only to find it.</source>
        <translation>Ciśnienie spadło o %1, co wskazuje na nieszczelność. Kontynuować tylko po to, by ją znaleźć.</translation>
    </message>
    <message>
        <source>Started at %1, outside %2 to %3. Repeat the let-by test within that band.</source>
        <translation>Zaczęto od %1, poza przedziałem %2 do %3. Powtórzyć próbę przepuszczania zaworu w tym przedziale.</translation>
    </message>
    <message>
        <source>Watched for %1 only; at least %2 is needed. Repeat it.</source>
        <translation>Obserwowano tylko przez %1; potrzeba co najmniej %2. Powtórzyć.</translation>
    </message>
    <message>
        <source>Steady enough to start timing (change %1).</source>
        <translation>Wystarczająco stabilne, aby zacząć pomiar czasu (zmiana %1).</translation>
    </message>
    <message>
        <source>Still moving: %1, more than %2. Wait longer before timing; if it will not steady, find out why.</source>
        <translation>Nadal się zmienia: %1, więcej niż %2. Poczekać dłużej przed pomiarem czasu; jeśli się nie ustabilizuje, ustalić dlaczego.</translation>
    </message>
    <message>
        <source>Settled for %1 only; at least %2 is needed. Repeat it.</source>
        <translation>Stabilizowano tylko przez %1; potrzeba co najmniej %2. Powtórzyć.</translation>
    </message>
    <message>
        <source>Timed from %1.</source>
        <translation>Czas mierzono od %1.</translation>
    </message>
    <message>
        <source>Timed from %1, below %2. Isolate and find the cause before testing.</source>
        <translation>Czas mierzono od %1, poniżej %2. Odciąć i znaleźć przyczynę przed badaniem.</translation>
    </message>
    <message>
        <source>Timed from %1: the test pressure could not be reached, and %2 or more is accepted then.</source>
        <translation>Czas mierzono od %1: ciśnienia próbnego nie dało się osiągnąć, a wtedy dopuszcza się %2 lub więcej.</translation>
    </message>
    <message>
        <source>Timed from %1, short of the test pressure. From %2 it is accepted only where the pressure can&apos;t be reached: say why, or raise it and repeat.</source>
        <translation>Czas mierzono od %1, poniżej ciśnienia próbnego. Od %2 dopuszcza się to tylko, gdy ciśnienia nie da się osiągnąć: podać dlaczego albo podnieść je i powtórzyć.</translation>
    </message>
    <message>
        <source>Timed from %1, above %2: the regulator may have locked up and hide a leak. Lower it and repeat.</source>
        <translation>Czas mierzono od %1, powyżej %2: reduktor mógł się zamknąć i ukrywać nieszczelność. Obniżyć ciśnienie i powtórzyć.</translation>
    </message>
    <message>
        <source>Timed for %1; %2 is needed.</source>
        <translation>Czas mierzono przez %1; potrzeba %2.</translation>
    </message>
    <message>
        <source>Timed for %1; %2 is needed. Repeat the test.</source>
        <translation>Czas mierzono przez %1; potrzeba %2. Powtórzyć badanie.</translation>
    </message>
    <message>
        <source>No perceptible movement: %1, below %2.</source>
        <translation>Brak zauważalnej zmiany: %1, poniżej %2.</translation>
    </message>
    <message>
        <source>A fall of %1, within the %2 allowed, and no smell of gas.</source>
        <translation>Spadek o %1, w granicach dopuszczalnych %2, i brak zapachu gazu.</translation>
    </message>
    <message>
        <source>A fall of %1 is more than the %2 allowed.</source>
        <translation>Spadek o %1 jest większy niż dopuszczalne %2.</translation>
    </message>
    <message>
        <source>A fall of %1 on new pipework, where none is allowed (perceptible from %2).</source>
        <translation>Spadek o %1 na nowych rurach, gdzie żaden nie jest dopuszczalny (zauważalny od %2).</translation>
    </message>
    <message>
        <source>A fall of %1 on pipework alone, where none is allowed (perceptible from %2).</source>
        <translation>Spadek o %1 na samych rurach, gdzie żaden nie jest dopuszczalny (zauważalny od %2).</translation>
    </message>
    <message>
        <source>The pressure rose by %1 during the test: warming, or the valve letting by. Find the cause and repeat.</source>
        <translation>Ciśnienie wzrosło o %1 podczas badania: ogrzanie albo zawór przepuszcza. Znaleźć przyczynę i powtórzyć.</translation>
    </message>
    <message>
        <source>A smell of gas fails the test, whatever the gauge shows.</source>
        <translation>Zapach gazu oznacza, że badanie nie spełnia wymagań, cokolwiek wskazuje manometr.</translation>
    </message>
    <message>
        <source>Say whether there was a smell of gas during the test.</source>
        <translation>Podać, czy podczas badania był zapach gazu.</translation>
    </message>
    <message>
        <source>Say whether appliances were connected, isolated or not there during the test.</source>
        <translation>Podać, czy urządzenia były podczas badania podłączone, odcięte, czy ich nie było.</translation>
    </message>
    <message>
        <source>Say whether the pipework is new or was there before.</source>
        <translation>Podać, czy rury są nowe, czy były wcześniej.</translation>
    </message>
    <message>
        <source>A fall of %1, below %2, with the pipework shown clear of movement: the volume need not be worked out.</source>
        <translation>Spadek o %1, poniżej %2, przy wykazanym braku zmiany na rurach: objętości nie trzeba obliczać.</translation>
    </message>
    <message>
        <source>The gauge moved by %1 (perceptible from %2). Isolate the appliances at their valves and repeat, to show that it does not come from the pipework.</source>
        <translation>Manometr zmienił wskazanie o %1 (zauważalne od %2). Odciąć urządzenia zaworami i powtórzyć, aby wykazać, że nie pochodzi to od rur.</translation>
    </message>
    <message>
        <source>With appliances isolated the gauge did not move perceptibly (%1): the pipework is clear.</source>
        <translation>Przy odciętych urządzeniach manometr nie zmienił się zauważalnie (%1): rury są bez zarzutu.</translation>
    </message>
    <message>
        <source>With appliances isolated it still fell by %1 (perceptible from %2): the pipework leaks.</source>
        <translation>Przy odciętych urządzeniach nadal spadło o %1 (zauważalne od %2): rury są nieszczelne.</translation>
    </message>
    <message>
        <source>The new pipework is tight. Now open the appliance valves and repeat the test.</source>
        <translation>Nowe rury są szczelne. Teraz otworzyć zawory urządzeń i powtórzyć badanie.</translation>
    </message>
    <message>
        <source>What Edition 4 allows for %1 is not in the rule book. Enter its drops by volume there, once, from your own copy of the standard.</source>
        <translation>W księdze reguł nie ma tego, co wydanie 4 dopuszcza dla %1. Wpisać tam raz jego spadki według objętości z własnego egzemplarza normy.</translation>
    </message>
    <message>
        <source>A volume of %1 is in the band up to %2, which may fall by %3.</source>
        <translation>Objętość %1 jest w przedziale do %2, dla którego dopuszcza się spadek o %3.</translation>
    </message>
    <message>
        <source>The volume of %1 is beyond the last band entered in the rule book.</source>
        <translation>Objętość %1 wykracza poza ostatni przedział wpisany w księdze reguł.</translation>
    </message>
    <message>
        <source>For information only: the withdrawn Edition 3 would have allowed %1. It decides nothing here.</source>
        <translation>Tylko dla informacji: wycofane wydanie 3 dopuszczałoby %1. Tutaj o niczym to nie rozstrzyga.</translation>
    </message>
    <message>
        <source>%1 is too near the limit of %2 to tell: the gauge reads a change to ±%3. Repeat the test, or use a finer gauge.</source>
        <translation>%1 jest zbyt blisko granicy %2, aby rozstrzygnąć: manometr odczytuje zmianę z dokładnością ±%3. Powtórzyć badanie albo użyć dokładniejszego manometru.</translation>
    </message>
    <message>
        <source>As a leak the change would be %1, give or take %2.</source>
        <translation>Jako wyciek zmiana odpowiada %1, z dokładnością do %2.</translation>
    </message>
    <message>
        <source>A change of %1 in the gas&apos;s temperature alone could account for it.</source>
        <translation>Sama zmiana temperatury gazu o %1 mogłaby to wyjaśnić.</translation>
    </message>
    <message>
        <source>Temperature would have to change by %1 to account for it, more than the %2 assumed.</source>
        <translation>Temperatura musiałaby zmienić się o %1, aby to wyjaśnić, więcej niż przyjęte %2.</translation>
    </message>
    <message>
        <source>It fell while settling and kept on falling: a steady fall is a leak&apos;s, not a settling gas&apos;s.</source>
        <translation>Spadało podczas stabilizacji i spadało dalej: stały spadek wynika z nieszczelności, nie ze stabilizacji gazu.</translation>
    </message>
    <message>
        <source>Keep the gas off. Trace and repair, then test again from the start; or make safe.</source>
        <translation>Gaz ma pozostać zamknięty. Znaleźć i naprawić, a potem zbadać ponownie od początku; albo zabezpieczyć.</translation>
    </message>
    <message>
        <source>The two displays differ by %1, within one step of the gauge (%2).</source>
        <translation>Oba wyświetlacze różnią się o %1, w granicach jednej działki manometru (%2).</translation>
    </message>
    <message>
        <source>The two displays differ by %1, more than one step of the gauge (%2). Read them again.</source>
        <translation>Oba wyświetlacze różnią się o %1, więcej niż jedna działka manometru (%2). Odczytać ponownie.</translation>
    </message>
    <message>
        <source>A pilot was left lit and draws gas. Put it out and repeat the test.</source>
        <translation>Płomyk pilotowy pozostał zapalony i pobiera gaz. Zgasić go i powtórzyć badanie.</translation>
    </message>
    <message>
        <source>Say whether the pilot lights were out.</source>
        <translation>Podać, czy płomyki pilotowe były zgaszone.</translation>
    </message>
    <message>
        <source>Which drop applies is not known: the meter or a pipe&apos;s size is not said, or lies outside the table.</source>
        <translation>Nie wiadomo, jaki spadek jest właściwy: nie podano gazomierza lub średnicy rury albo są poza tabelą.</translation>
    </message>
    <message>
        <source>At least %1 must pass the meter.</source>
        <translation>Przez gazomierz musi przejść co najmniej %1.</translation>
    </message>
    <message>
        <source>%1 passed the meter; at least %2 was needed.</source>
        <translation>Przez gazomierz przeszło %1; potrzeba było co najmniej %2.</translation>
    </message>
    <message>
        <source>Only %1 passed the meter; at least %2 is needed. Purge on.</source>
        <translation>Przez gazomierz przeszło tylko %1; potrzeba co najmniej %2. Odpowietrzać dalej.</translation>
    </message>
    <message>
        <source>The installation was not purged. Purge it before it is used, or leave it sealed.</source>
        <translation>Instalacji nie odpowietrzono. Odpowietrzyć przed użyciem albo pozostawić zaślepioną.</translation>
    </message>
    <message>
        <source>No purge was needed: no air got in.</source>
        <translation>Odpowietrzenie nie było potrzebne: powietrze nie dostało się do środka.</translation>
    </message>
    <message>
        <source>At %1, above %2, purge through an open burner: light it as soon as it will, and keep trying.</source>
        <translation>Przy %1, powyżej %2, odpowietrzać przez otwarty palnik: zapalić, gdy tylko się da, i próbować dalej.</translation>
    </message>
    <message>
        <source>At %1, up to %2, it may be purged to a well-ventilated place with no source of ignition.</source>
        <translation>Przy %1, do %2, można odpowietrzyć do dobrze wentylowanego miejsca bez źródła zapłonu.</translation>
    </message>
    <message>
        <source>At %1, above %2, it had to be purged through an open burner.</source>
        <translation>Przy %1, powyżej %2, trzeba było odpowietrzyć przez otwarty palnik.</translation>
    </message>
    <message>
        <source>There is no steady flame at every appliance yet. Purge on until there is.</source>
        <translation>Nie w każdym urządzeniu jest już stały płomień. Odpowietrzać dalej, aż będzie.</translation>
    </message>
    <message>
        <source>The test point and every disturbed joint were proved with leak detection fluid and wiped.</source>
        <translation>Króciec pomiarowy i każde naruszone połączenie sprawdzono płynem do wykrywania nieszczelności i wytarto.</translation>
    </message>
    <message>
        <source>Prove the test point and every joint that was disturbed with leak detection fluid.</source>
        <translation>Sprawdzić króciec pomiarowy i każde naruszone połączenie płynem do wykrywania nieszczelności.</translation>
    </message>
    <message>
        <source>Wipe the leak detection fluid off: what stays can corrode the pipe.</source>
        <translation>Wytrzeć płyn do wykrywania nieszczelności: pozostałości mogą powodować korozję rury.</translation>
    </message>
    <message>
        <source>Say whether the test point and the disturbed joints were proved and wiped.</source>
        <translation>Podać, czy króciec pomiarowy i naruszone połączenia sprawdzono i wytarto.</translation>
    </message>
    <message>
        <source>%1, within %2 to %3.</source>
        <translation>%1, w przedziale %2 do %3.</translation>
    </message>
    <message>
        <source>%1, outside %2 to %3.</source>
        <translation>%1, poza przedziałem %2 do %3.</translation>
    </message>
    <message>
        <source>The regulator locks up at %1, not above %2.</source>
        <translation>Reduktor zamyka się przy %1, nie powyżej %2.</translation>
    </message>
    <message>
        <source>The regulator locks up at %1, above %2. Have it put right.</source>
        <translation>Reduktor zamyka się przy %1, powyżej %2. Zlecić naprawę.</translation>
    </message>
    <message>
        <source>Open-flued: (%1 − %2) × %3 cm²/kW = %4.</source>
        <translation>Otwarta komora spalania: (%1 − %2) × %3 cm²/kW = %4.</translation>
    </message>
    <message>
        <source>%1 × %2 cm²/kW = %3.</source>
        <translation>%1 × %2 cm²/kW = %3.</translation>
    </message>
    <message>
        <source>Flueless heater: %1 + (%2 − %3) × %4 cm²/kW = %5.</source>
        <translation>Ogrzewacz bez odprowadzenia spalin: %1 + (%2 − %3) × %4 cm²/kW = %5.</translation>
    </message>
    <message>
        <source>Cabinet heater, at high and at low level each: %1 × %2 cm²/kW, at least %3: %4.</source>
        <translation>Ogrzewacz szafkowy, u góry i u dołu po: %1 × %2 cm²/kW, co najmniej %3: %4.</translation>
    </message>
    <message>
        <source>Cooker in a room of %1: %2.</source>
        <translation>Kuchenka w pomieszczeniu %1: %2.</translation>
    </message>
    <message>
        <source>Flueless water heater in a room of %1: %2.</source>
        <translation>Podgrzewacz wody bez odprowadzenia spalin w pomieszczeniu %1: %2.</translation>
    </message>
    <message>
        <source>Decorative fuel effect fire: %1.</source>
        <translation>Kominek gazowy dekoracyjny: %1.</translation>
    </message>
    <message>
        <source>A radiant or inset fire of %1 asks for no vent (up to %2).</source>
        <translation>Kominek promiennikowy lub wkładowy %1 nie wymaga otworu (do %2).</translation>
    </message>
    <message>
        <source>Flueless tumble dryer: %1.</source>
        <translation>Suszarka bez odprowadzenia spalin: %1.</translation>
    </message>
    <message>
        <source>The maker asks for %1.</source>
        <translation>Producent wymaga %1.</translation>
    </message>
    <message>
        <source>A room-sealed appliance takes its air from outside and asks for no vent in a room.</source>
        <translation>Urządzenie z zamkniętą komorą spalania pobiera powietrze z zewnątrz i nie wymaga otworu w pomieszczeniu.</translation>
    </message>
    <message>
        <source>Several appliances: flueless heaters %1, open-flued heaters %2, largest other %3; what counts is %4.</source>
        <translation>Kilka urządzeń: ogrzewacze bez odprowadzenia spalin %1, z otwartą komorą %2, największe inne %3; liczy się %4.</translation>
    </message>
    <message>
        <source>Through an inside wall %1 counts as %1 ÷ %2 = %3.</source>
        <translation>Przez ścianę wewnętrzną %1 liczy się jako %1 ÷ %2 = %3.</translation>
    </message>
    <message>
        <source>%1 gross ÷ %2 = %3 net.</source>
        <translation>%1 brutto ÷ %2 = %3 netto.</translation>
    </message>
    <message>
        <source>The room has %1, which may be %2 less by its last digit: %3 is taken.</source>
        <translation>Pomieszczenie ma %1, co według ostatniej cyfry może być o %2 mniej: przyjmuje się %3.</translation>
    </message>
    <message>
        <source>How a decorative fire counts beside other open-flued appliances has not been read: its whole vent is added here, which is the stricter way.</source>
        <translation>Nie przeczytano, jak liczy się kominek dekoracyjny obok innych urządzeń z otwartą komorą: dodaje się tu cały jego otwór, co jest surowsze.</translation>
    </message>
    <message>
        <source>Needed: %1 of free area, straight to outside.</source>
        <translation>Potrzeba: %1 wolnego przekroju, prosto na zewnątrz.</translation>
    </message>
    <message>
        <source>%1 of free area is there; %2 is needed.</source>
        <translation>Wolny przekrój wynosi %1; potrzeba %2.</translation>
    </message>
    <message>
        <source>Only %1 of free area is there; %2 is needed. Enlarge the vent before the appliance is used.</source>
        <translation>Wolny przekrój wynosi tylko %1; potrzeba %2. Powiększyć otwór, zanim urządzenie będzie używane.</translation>
    </message>
    <message>
        <source>%1 of free area is there, %2 is needed: too near to tell (±%3). Measure the vent again or enlarge it.</source>
        <translation>Wolny przekrój wynosi %1, potrzeba %2: zbyt blisko, aby rozstrzygnąć (±%3). Zmierzyć otwór ponownie albo go powiększyć.</translation>
    </message>
    <message>
        <source>No vent is asked for here.</source>
        <translation>Tu otwór nie jest wymagany.</translation>
    </message>
    <message>
        <source>The net heat input of an appliance is missing.</source>
        <translation>Brakuje obciążenia cieplnego netto urządzenia.</translation>
    </message>
    <message>
        <source>The kind of an appliance, or its flue, has not been said, or no rule fits it: go by the maker&apos;s instructions.</source>
        <translation>Nie podano rodzaju urządzenia lub odprowadzenia spalin albo żadna reguła nie pasuje: stosować instrukcje producenta.</translation>
    </message>
    <message>
        <source>The room&apos;s volume is missing.</source>
        <translation>Brakuje objętości pomieszczenia.</translation>
    </message>
    <message>
        <source>Not said whether this is a room or an internal space such as a hall.</source>
        <translation>Nie podano, czy to pomieszczenie, czy przestrzeń wewnętrzna, np. korytarz.</translation>
    </message>
    <message>
        <source>The vents there, or the free area of one of them, are missing.</source>
        <translation>Brakuje otworów, które tam są, lub wolnego przekroju jednego z nich.</translation>
    </message>
    <message>
        <source>Not said where a vent leads: straight to outside, or through an inside wall.</source>
        <translation>Nie podano, dokąd prowadzi otwór: prosto na zewnątrz czy przez ścianę wewnętrzną.</translation>
    </message>
    <message>
        <source>Not said whether a vent is at high or at low level.</source>
        <translation>Nie podano, czy otwór jest u góry, czy u dołu.</translation>
    </message>
    <message>
        <source>No appliance has been entered for this space.</source>
        <translation>Dla tej przestrzeni nie podano żadnego urządzenia.</translation>
    </message>
    <message>
        <source>Not said what the appliances stand in: a room, a hall, a compartment or a boiler room. Each has its own rule.</source>
        <translation>Nie podano, gdzie stoją urządzenia: pomieszczenie, korytarz, komora czy kotłownia. Każde ma własną regułę.</translation>
    </message>
    <message>
        <source>Choose the gas: a gross heat input becomes net by the ratio of that gas.</source>
        <translation>Wybrać gaz: obciążenie cieplne brutto przelicza się na netto stosunkiem dla tego gazu.</translation>
    </message>
    <message>
        <source>Not said whether a door opens straight to outside.</source>
        <translation>Nie podano, czy drzwi otwierają się prosto na zewnątrz.</translation>
    </message>
    <message>
        <source>Not said whether the dwelling is built tight (air permeability 5 m³/(h·m²) or less). If it is, more may be needed.</source>
        <translation>Nie podano, czy mieszkanie jest zbudowane szczelnie (przepuszczalność powietrza 5 m³/(h·m²) lub mniej). Jeśli tak, może być potrzebne więcej.</translation>
    </message>
    <message>
        <source>In a dwelling built tight (air permeability 5 m³/(h·m²) or less) more may be needed than the usual rule says. Enter the rule from your own copy, or go by the maker.</source>
        <translation>W mieszkaniu zbudowanym szczelnie (przepuszczalność powietrza 5 m³/(h·m²) lub mniej) może być potrzebne więcej, niż mówi zwykła reguła. Wpisać regułę z własnego egzemplarza albo stosować się do producenta.</translation>
    </message>
    <message>
        <source>Straight to outside there is %1 of %2; whether a flueless appliance may take the rest through an inside wall has not been read. Look it up.</source>
        <translation>Prosto na zewnątrz jest %1 z %2; nie przeczytano, czy urządzenie bez odprowadzenia spalin może pobierać resztę przez ścianę wewnętrzną. Sprawdzić.</translation>
    </message>
    <message>
        <source>The high and the low vents must lead to the same place: both to the room, or both to outside.</source>
        <translation>Otwory u góry i u dołu muszą prowadzić w to samo miejsce: oba do pomieszczenia albo oba na zewnątrz.</translation>
    </message>
    <message>
        <source>The room that gives air to this compartment needs its own vent for the open-flued appliance.</source>
        <translation>Pomieszczenie, które daje powietrze tej komorze, potrzebuje własnego otworu dla urządzenia z otwartą komorą spalania.</translation>
    </message>
    <message>
        <source>Open-flued and room-sealed stand together: the open-flued row is taken for all.</source>
        <translation>Urządzenia z otwartą i zamkniętą komorą spalania stoją razem: dla wszystkich przyjmuje się wiersz dla otwartej komory.</translation>
    </message>
    <message>
        <source>A window or door that opens to outside is there.</source>
        <translation>Jest okno lub drzwi otwierane na zewnątrz.</translation>
    </message>
    <message>
        <source>A flueless appliance needs a window, a door or the like that opens to outside. There is none: not to be used here.</source>
        <translation>Urządzenie bez odprowadzenia spalin wymaga okna, drzwi lub podobnego otwarcia na zewnątrz. Nie ma go: nie używać tutaj.</translation>
    </message>
    <message>
        <source>Not said whether a window or door opens to outside.</source>
        <translation>Nie podano, czy okno lub drzwi otwierają się na zewnątrz.</translation>
    </message>
    <message>
        <source>The vents are open, can&apos;t be closed, and have no fly-screen.</source>
        <translation>Otwory są otwarte, nie da się ich zamknąć i nie mają siatki na owady.</translation>
    </message>
    <message>
        <source>A vent is blocked. Clear it before the appliance is used.</source>
        <translation>Otwór jest zatkany. Udrożnić go, zanim urządzenie będzie używane.</translation>
    </message>
    <message>
        <source>A vent can be closed. Fit one that can&apos;t.</source>
        <translation>Otwór da się zamknąć. Zamontować taki, którego zamknąć nie można.</translation>
    </message>
    <message>
        <source>A vent has a fly-screen or gauze that clogs. Take it out or change the vent.</source>
        <translation>Otwór ma siatkę na owady lub gazę, która się zatyka. Usunąć ją albo wymienić otwór.</translation>
    </message>
    <message>
        <source>A vent is blocked, can be closed, or has a fly-screen. Put it right before the appliance is used.</source>
        <translation>Otwór jest zatkany, da się zamknąć albo ma siatkę na owady. Naprawić, zanim urządzenie będzie używane.</translation>
    </message>
    <message>
        <source>A vent through a cavity wall has no sleeve: its air may come from the cavity. Sleeve it.</source>
        <translation>Otwór w ścianie szczelinowej nie ma tulei: powietrze może pochodzić ze szczeliny. Założyć tuleję.</translation>
    </message>
    <message>
        <source>Not said of every vent whether it is open, can be closed, or has a fly-screen.</source>
        <translation>Nie o każdym otworze podano, czy jest otwarty, czy da się zamknąć i czy ma siatkę na owady.</translation>
    </message>
    <message>
        <source>%1 net stands in this space; the domestic standard goes to %2.</source>
        <translation>W tej przestrzeni stoi %1 netto; norma domowa sięga do %2.</translation>
    </message>
    <message>
        <source>%1 net stands in this space, at or near %2: say which standard applies.</source>
        <translation>W tej przestrzeni stoi %1 netto, równo lub blisko %2: podać, która norma jest właściwa.</translation>
    </message>
    <message>
        <source>%1 net stands in this space; the domestic standard ends at %2. Use the standard for larger boilers.</source>
        <translation>W tej przestrzeni stoi %1 netto; norma domowa kończy się na %2. Zastosować normę dla większych kotłów.</translation>
    </message>
    <message>
        <source>%1 net is more than the boiler room standard covers (%2). A specialist&apos;s design is needed.</source>
        <translation>%1 netto to więcej, niż obejmuje norma dla kotłowni (%2). Potrzebny jest projekt specjalisty.</translation>
    </message>
    <message>
        <source>%1 net stands in this space; the boiler room standard goes to %2.</source>
        <translation>W tej przestrzeni stoi %1 netto; norma dla kotłowni sięga do %2.</translation>
    </message>
    <message>
        <source>This rule is for vents straight to outside, and one of these leads elsewhere: a specialist&apos;s design is needed.</source>
        <translation>Ta reguła dotyczy otworów prosto na zewnątrz, a jeden z nich prowadzi gdzie indziej: potrzebny jest projekt specjalisty.</translation>
    </message>
    <message>
        <source>This rule is for open-flued boilers, and one of these is not, or its flue has not been said: go by the maker.</source>
        <translation>Ta reguła dotyczy kotłów z otwartą komorą spalania, a jeden z nich takim nie jest albo nie podano jego odprowadzenia spalin: stosować się do producenta.</translation>
    </message>
    <message>
        <source>Not said whether this is a boiler room or an enclosure, or how much of the summer the boilers run.</source>
        <translation>Nie podano, czy to kotłownia, czy obudowa, ani przez jaką część lata pracują kotły.</translation>
    </message>
    <message>
        <source>The room has %1; at least %2 is asked for.</source>
        <translation>Pomieszczenie ma %1; wymagane jest co najmniej %2.</translation>
    </message>
    <message>
        <source>The room has only %1; the appliance is not allowed below %2.</source>
        <translation>Pomieszczenie ma tylko %1; poniżej %2 urządzenie nie jest dopuszczone.</translation>
    </message>
    <message>
        <source>The room has %1, at or near the least of %2: measure it again.</source>
        <translation>Pomieszczenie ma %1, równo lub blisko minimum %2: zmierzyć ponownie.</translation>
    </message>
    <message>
        <source>Not said whether this is a bed-sitting room.</source>
        <translation>Nie podano, czy to pokój dzienny i sypialnia zarazem.</translation>
    </message>
    <message>
        <source>%1 net is allowed here; the most is %2.</source>
        <translation>%1 netto jest tu dopuszczone; najwięcej %2.</translation>
    </message>
    <message>
        <source>%1 net is more than is allowed here: %2.</source>
        <translation>%1 netto to więcej, niż tu dopuszczono: %2.</translation>
    </message>
    <message>
        <source>%1 net is at or near the most allowed here, %2.</source>
        <translation>%1 netto jest równe lub bliskie największej tu dopuszczonej wartości, %2.</translation>
    </message>
    <message>
        <source>%1 of free area is there; %2 is advised for a cooker in a basement.</source>
        <translation>Wolny przekrój wynosi %1; dla kuchenki w piwnicy zaleca się %2.</translation>
    </message>
    <message>
        <source>Only %1 of free area is there; %2 is advised for a cooker in a basement, whatever the volume.</source>
        <translation>Wolny przekrój wynosi tylko %1; dla kuchenki w piwnicy zaleca się %2 bez względu na objętość.</translation>
    </message>
    <message>
        <source>%1 is not above %2.</source>
        <translation>%1 nie przekracza %2.</translation>
    </message>
    <message>
        <source>%1 is above %2: more air is needed to carry the heat away.</source>
        <translation>%1 przekracza %2: do odprowadzenia ciepła potrzeba więcej powietrza.</translation>
    </message>
    <message>
        <source>%1 is at or near %2: measure it again.</source>
        <translation>%1 jest równe lub bliskie %2: zmierzyć ponownie.</translation>
    </message>
    <message>
        <source>Danger: %1 of carbon monoxide was read (warning from %2). Get everyone out, turn the appliances off, open windows and doors if it is safe to, get medical help for anyone who feels ill, then ring the gas emergency service (LPG: the supplier&apos;s emergency number).</source>
        <translation>Niebezpieczeństwo: odczytano %1 tlenku węgla (ostrzeżenie od %2). Wyprowadzić wszystkich, wyłączyć urządzenia, otworzyć okna i drzwi, jeśli jest to bezpieczne, wezwać pomoc lekarską dla każdego, kto źle się czuje, a potem zadzwonić do pogotowia gazowego (LPG: numer alarmowy dostawcy).</translation>
    </message>
    <message>
        <source>%1 of carbon monoxide was read (warning from %2). Turn the appliances off, open the windows, and find the source before going on.</source>
        <translation>Odczytano %1 tlenku węgla (ostrzeżenie od %2). Wyłączyć urządzenia, otworzyć okna i znaleźć źródło, zanim prace będą kontynuowane.</translation>
    </message>
    <message>
        <source>The highest reading was %1. The action levels are not in the rule book: enter them from your own copy of the standard. Until then there is no verdict.</source>
        <translation>Najwyższy odczyt wyniósł %1. Poziomów działania nie ma w księdze reguł: wpisać je z własnego egzemplarza normy. Do tego czasu nie ma orzeczenia.</translation>
    </message>
    <message>
        <source>The highest reading was %1, not above %2, and not rising.</source>
        <translation>Najwyższy odczyt wyniósł %1, nie powyżej %2, i nie rośnie.</translation>
    </message>
    <message>
        <source>The highest reading was %1, at or near %2: go on measuring.</source>
        <translation>Najwyższy odczyt wyniósł %1, równo lub blisko %2: mierzyć dalej.</translation>
    </message>
    <message>
        <source>The highest reading was %1, above %2. Find the source: look at each appliance in turn.</source>
        <translation>Najwyższy odczyt wyniósł %1, powyżej %2. Znaleźć źródło: sprawdzić kolejno każde urządzenie.</translation>
    </message>
    <message>
        <source>The highest reading was %1; from %2 on the appliances go off, windows and doors are opened, everyone leaves, and the gas emergency service (LPG: the supplier&apos;s emergency number) is rung.</source>
        <translation>Najwyższy odczyt wyniósł %1; od %2 urządzenia się wyłącza, otwiera okna i drzwi, wszyscy wychodzą i dzwoni się do pogotowia gazowego (LPG: numer alarmowy dostawcy).</translation>
    </message>
    <message>
        <source>A cooker&apos;s peak of %1 (at most %2), since fallen to %3. Watch that it does not come back.</source>
        <translation>Szczyt przy kuchence %1 (co najwyżej %2), od tego czasu spadł do %3. Obserwować, czy nie wraca.</translation>
    </message>
    <message>
        <source>The readings are still rising: go on measuring until they hold or fall, and find the source.</source>
        <translation>Odczyty nadal rosną: mierzyć dalej, aż się utrzymają lub spadną, i znaleźć źródło.</translation>
    </message>
    <message>
        <source>Whether the readings rise or fall can&apos;t be told: go on measuring.</source>
        <translation>Nie można powiedzieć, czy odczyty rosną, czy spadają: mierzyć dalej.</translation>
    </message>
    <message>
        <source>Rising: %1 in the last %2 (±%3).</source>
        <translation>Rośnie: %1 w ciągu ostatnich %2 (±%3).</translation>
    </message>
    <message>
        <source>Steady: %1 in the last %2 (±%3).</source>
        <translation>Stabilnie: %1 w ciągu ostatnich %2 (±%3).</translation>
    </message>
    <message>
        <source>Falling: %1 in the last %2 (±%3).</source>
        <translation>Spada: %1 w ciągu ostatnich %2 (±%3).</translation>
    </message>
    <message>
        <source>The highest mean of %3 was %1; the limit for people at work is %2. It does not show that a home is safe.</source>
        <translation>Najwyższa średnia z %3 wyniosła %1; wartość graniczna dla osób w pracy to %2. Nie dowodzi to, że w domu jest bezpiecznie.</translation>
    </message>
    <message>
        <source>The highest mean of %3 was %1, at or near the limit for people at work of %2.</source>
        <translation>Najwyższa średnia z %3 wyniosła %1, równo lub blisko wartości granicznej %2 dla osób w pracy.</translation>
    </message>
    <message>
        <source>The highest mean of %3 was %1, above the limit for people at work of %2.</source>
        <translation>Najwyższa średnia z %3 wyniosła %1, powyżej wartości granicznej %2 dla osób w pracy.</translation>
    </message>
    <message>
        <source>The mean was %1 over the %2 that were measured. The limit is for %3; nothing is concluded for the time that was not measured.</source>
        <translation>Średnia wyniosła %1 w ciągu zmierzonych %2. Wartość graniczna dotyczy %3; o czasie niezmierzonym nic się nie wnioskuje.</translation>
    </message>
    <message>
        <source>The mean was %1 over the %2 that were measured, above the limit of %4 for %3. The time that was not measured is not counted.</source>
        <translation>Średnia wyniosła %1 w ciągu zmierzonych %2, powyżej wartości granicznej %4 dla %3. Czasu niezmierzonego nie wlicza się.</translation>
    </message>
    <message>
        <source>The %2 that were measured, at a mean of %1, already amount to more than %4 over %3, whatever follows.</source>
        <translation>Zmierzone %2, przy średniej %1, to już więcej niż %4 przez %3, cokolwiek nastąpi potem.</translation>
    </message>
    <message>
        <source>Up to %1 lies between two readings; what happened between them is not known.</source>
        <translation>Między dwoma odczytami jest do %1; nie wiadomo, co działo się pomiędzy nimi.</translation>
    </message>
    <message>
        <source>For comparison: the World Health Organization&apos;s guideline is %1 for %2.</source>
        <translation>Dla porównania: wytyczna Światowej Organizacji Zdrowia to %1 przez %2.</translation>
    </message>
    <message>
        <source>The mean of %1 is above the World Health Organization&apos;s guideline of %2 for %3.</source>
        <translation>Średnia %1 przekracza wytyczną Światowej Organizacji Zdrowia %2 przez %3.</translation>
    </message>
    <message>
        <source>At %1 a carbon monoxide alarm would sound: at %2 it must within %3. That is a threshold for saving lives, not a safe level.</source>
        <translation>Przy %1 czujnik tlenku węgla włączyłby alarm: przy %2 musi to zrobić w ciągu %3. To próg ratujący życie, nie bezpieczny poziom.</translation>
    </message>
    <message>
        <source>%1 was read outdoors first.</source>
        <translation>Najpierw odczytano %1 na zewnątrz.</translation>
    </message>
    <message>
        <source>%1 was read outdoors: zero the instrument in clean air, or find out why.</source>
        <translation>Na zewnątrz odczytano %1: wyzerować przyrząd na czystym powietrzu albo ustalić dlaczego.</translation>
    </message>
    <message>
        <source>No reading outdoors was taken first: zero the instrument outdoors and note the reading there.</source>
        <translation>Nie wykonano najpierw odczytu na zewnątrz: wyzerować przyrząd na zewnątrz i zapisać tamtejszy odczyt.</translation>
    </message>
    <message>
        <source>The reading outdoors was not the first one.</source>
        <translation>Odczyt na zewnątrz nie był pierwszy.</translation>
    </message>
    <message>
        <source>No reading in the room has been entered.</source>
        <translation>Nie podano odczytu w pomieszczeniu.</translation>
    </message>
    <message>
        <source>Not said where reading %1 was taken: it is counted as in the room, and nothing passes.</source>
        <translation>Nie podano, gdzie wykonano odczyt %1: liczy się jak w pomieszczeniu i nic nie spełnia wymagań.</translation>
    </message>
    <message>
        <source>Not said when reading %1 was taken: it is put with the one before, and nothing passes.</source>
        <translation>Nie podano, kiedy wykonano odczyt %1: łączy się go z poprzednim i nic nie spełnia wymagań.</translation>
    </message>
    <message>
        <source>Reading %1 has no figure: nothing passes until it is there or its line is empty.</source>
        <translation>Odczyt %1 nie ma wartości: nic nie spełnia wymagań, dopóki jej nie ma albo wiersz nie jest pusty.</translation>
    </message>
    <message>
        <source>Reading %1 is earlier than the one before it: check the times.</source>
        <translation>Odczyt %1 jest wcześniejszy niż poprzedni: sprawdzić godziny.</translation>
    </message>
    <message>
        <source>The readings were taken from outside the room.</source>
        <translation>Odczyty wykonano spoza pomieszczenia.</translation>
    </message>
    <message>
        <source>Sampled at %1 height, %2 from the appliance, for %3.</source>
        <translation>Próbki pobierano na wysokości %1, %2 od urządzenia, przez %3.</translation>
    </message>
    <message>
        <source>Sampled at %1; the standard asks for %2.</source>
        <translation>Próbki pobierano na %1; norma wymaga %2.</translation>
    </message>
    <message>
        <source>Sampled %1 from the appliance; at least %2 is asked for.</source>
        <translation>Próbki pobierano %1 od urządzenia; wymagane jest co najmniej %2.</translation>
    </message>
    <message>
        <source>Sampled for %1; at least %2 is asked for.</source>
        <translation>Próbki pobierano przez %1; wymagane jest co najmniej %2.</translation>
    </message>
    <message>
        <source>Nothing can be concluded from these readings about anyone&apos;s blood: the estimate is only of an order, and people may have been there longer. Anyone who feels ill needs a doctor now.</source>
        <translation>Z tych odczytów nie można nic wnioskować o niczyjej krwi: oszacowanie dotyczy tylko rzędu wielkości, a ludzie mogli być tam dłużej. Kto źle się czuje, potrzebuje teraz lekarza.</translation>
    </message>
    <message>
        <source>Exposure of this order (%1) can raise carbon monoxide in the blood above %2 within an hour. Keep people out and get medical advice for anyone who was there.</source>
        <translation>Narażenie tego rzędu (%1) może w ciągu godziny podnieść tlenek węgla we krwi powyżej %2. Nikogo nie wpuszczać i zasięgnąć porady lekarskiej dla każdego, kto tam był.</translation>
    </message>
    <message>
        <source>Exposure like this is dangerous: it can have raised carbon monoxide in the blood above %1 already. Get medical help for everyone who was there.</source>
        <translation>Takie narażenie jest niebezpieczne: mogło już podnieść tlenek węgla we krwi powyżej %1. Wezwać pomoc lekarską dla wszystkich, którzy tam byli.</translation>
    </message>
    <message>
        <source>Pregnant women, children and people with heart disease are harmed sooner.</source>
        <translation>Kobietom w ciąży, dzieciom i osobom z chorobą serca szkodzi wcześniej.</translation>
    </message>
    <message>
        <source>The gas rate is %1; reading and timing leave ±%2.</source>
        <translation>Zużycie gazu wynosi %1; odczyt i pomiar czasu dają ±%2.</translation>
    </message>
    <message>
        <source>The gas rate is %1, but reading and timing leave ±%2. For ±%3 time at least %4.</source>
        <translation>Zużycie gazu wynosi %1, ale odczyt i pomiar czasu dają ±%2. Dla ±%3 mierzyć co najmniej %4.</translation>
    </message>
    <message>
        <source>The gas rate is %1, but known only to ±%2, and no timing within a day makes it better: this meter is too coarse for it.</source>
        <translation>Zużycie gazu wynosi %1, ale znane jest tylko z dokładnością ±%2 i żaden pomiar w ciągu dnia tego nie poprawi: ten gazomierz jest na to za mało dokładny.</translation>
    </message>
    <message>
        <source>There is no meter, so the heat input can&apos;t be taken. Read the operating pressure; where that can&apos;t be read, check the combustion and write down why.</source>
        <translation>Nie ma gazomierza, więc obciążenia cieplnego nie da się wyznaczyć. Odczytać ciśnienie pracy; gdzie się nie da, sprawdzić spalanie i zapisać dlaczego.</translation>
    </message>
    <message>
        <source>The time must be longer than nothing. Enter what the stopwatch showed.</source>
        <translation>Czas musi być dłuższy niż zero. Wpisać, co wskazał stoper.</translation>
    </message>
    <message>
        <source>The index runs backwards, from %1 to %2. Read it again; if it came back to nought in between, say so.</source>
        <translation>Licznik biegnie wstecz, od %1 do %2. Odczytać ponownie; jeśli w międzyczasie przeszedł przez zero, podać to.</translation>
    </message>
    <message>
        <source>No gas passed in the time. Check the two readings, and that the burner was lit.</source>
        <translation>W tym czasie gaz nie przepłynął. Sprawdzić oba odczyty i to, czy palnik się palił.</translation>
    </message>
    <message>
        <source>No meter passes so much. Check the decimal point and the unit.</source>
        <translation>Żaden gazomierz tyle nie przepuszcza. Sprawdzić przecinek i jednostkę.</translation>
    </message>
    <message>
        <source>A turn of the test dial is 1, 2, 5 or 10 ft³, and at least one whole turn is timed. Read what the dial says.</source>
        <translation>Obrót tarczy próbnej to 1, 2, 5 lub 10 ft³ i mierzy się co najmniej jeden pełny obrót. Odczytać, co podaje tarcza.</translation>
    </message>
    <message>
        <source>Another appliance took gas too. Turn all others off, pilots too, and time it again.</source>
        <translation>Inne urządzenie też pobierało gaz. Wyłączyć wszystkie inne, także płomyki pilotowe, i zmierzyć ponownie.</translation>
    </message>
    <message>
        <source>The burner was not at its full rate. Set it to maximum and time it again.</source>
        <translation>Palnik nie pracował z pełną mocą. Ustawić na maksimum i zmierzyć ponownie.</translation>
    </message>
    <message>
        <source>The appliance was cold, and a cold one passes more gas. Let it warm up and time it again.</source>
        <translation>Urządzenie było zimne, a zimne przepuszcza więcej gazu. Rozgrzać je i zmierzyć ponownie.</translation>
    </message>
    <message>
        <source>Say whether all others were off, the burner at full rate and the appliance warm.</source>
        <translation>Podać, czy wszystkie inne były wyłączone, palnik pracował z pełną mocą, a urządzenie było rozgrzane.</translation>
    </message>
    <message>
        <source>The gas rate of %1 is above the meter&apos;s own %2. Check the readings; if they are right, the meter is too small.</source>
        <translation>Zużycie gazu %1 przekracza %2 samego gazomierza. Sprawdzić odczyty; jeśli są poprawne, gazomierz jest za mały.</translation>
    </message>
    <message>
        <source>The gas rate of %1 is below %2, from where the meter&apos;s accuracy is known.</source>
        <translation>Zużycie gazu %1 jest poniżej %2, od którego znana jest dokładność gazomierza.</translation>
    </message>
    <message>
        <source>The meter&apos;s own ±%1 comes on top; the figures and the heat input count it.</source>
        <translation>Dochodzi ±%1 samego gazomierza; wartości i obciążenie cieplne to uwzględniają.</translation>
    </message>
    <message>
        <source>The meter&apos;s own ±%1 comes on top; it is not counted.</source>
        <translation>Dochodzi ±%1 samego gazomierza; nie jest uwzględnione.</translation>
    </message>
    <message>
        <source>The heat input is %1 off the plate&apos;s; up to %2 is allowed, and it is known to ±%3.</source>
        <translation>Obciążenie cieplne różni się od podanego na tabliczce o %1; dopuszcza się do %2, a znane jest z dokładnością ±%3.</translation>
    </message>
    <message>
        <source>The heat input is %1 off the plate&apos;s: too near the %2 allowed to tell, known only to ±%3. Time it longer.</source>
        <translation>Obciążenie cieplne różni się od podanego na tabliczce o %1: zbyt blisko dopuszczalnych %2, aby rozstrzygnąć, znane tylko z dokładnością ±%3. Mierzyć dłużej.</translation>
    </message>
    <message>
        <source>Over-rated: the heat input is %1 above the plate&apos;s; %2 is allowed (known to ±%3). Check the burner pressure and the injectors against the maker&apos;s figures; if they are right, ask the maker. Don&apos;t leave it over-rated.</source>
        <translation>Przeciążenie: obciążenie cieplne jest o %1 większe niż na tabliczce; dopuszcza się %2 (znane z dokładnością ±%3). Sprawdzić ciśnienie na palniku i dysze z danymi producenta; jeśli są poprawne, zapytać producenta. Nie pozostawiać przeciążonego.</translation>
    </message>
    <message>
        <source>Under-rated: the heat input is %1 below the plate&apos;s; %2 is allowed (known to ±%3). Check the inlet pressure at full load, the burner pressure and the injectors for dirt or a wrong size; if they are right, ask the maker.</source>
        <translation>Niedociążenie: obciążenie cieplne jest o %1 mniejsze niż na tabliczce; dopuszcza się %2 (znane z dokładnością ±%3). Sprawdzić ciśnienie na wlocie przy pełnym obciążeniu, ciśnienie na palniku oraz dysze: brud lub zły rozmiar; jeśli są poprawne, zapytać producenta.</translation>
    </message>
    <message>
        <source>Gross with gross: %1, the plate&apos;s %2.</source>
        <translation>Brutto z brutto: %1, tabliczka %2.</translation>
    </message>
    <message>
        <source>Net with net: %1, the plate&apos;s %2.</source>
        <translation>Netto z netto: %1, tabliczka %2.</translation>
    </message>
    <message>
        <source>The heat input is %1 gross, %2 net.</source>
        <translation>Obciążenie cieplne wynosi %1 brutto, %2 netto.</translation>
    </message>
    <message>
        <source>The heat input is %1 gross. The net one needs the gas&apos;s ratio of gross to net.</source>
        <translation>Obciążenie cieplne wynosi %1 brutto. Dla wartości netto potrzebny jest stosunek brutto do netto tego gazu.</translation>
    </message>
    <message>
        <source>Enter the calorific value of the gas: it stands on the bill.</source>
        <translation>Wpisać wartość kaloryczną gazu: jest na rachunku.</translation>
    </message>
    <message>
        <source>Enter the heat input on the appliance&apos;s plate, and whether it is gross or net.</source>
        <translation>Wpisać obciążenie cieplne z tabliczki urządzenia i czy jest brutto, czy netto.</translation>
    </message>
    <message>
        <source>Say whether the plate&apos;s heat input is gross or net: they differ by about a tenth.</source>
        <translation>Podać, czy obciążenie cieplne z tabliczki jest brutto, czy netto: różnią się o około jedną dziesiątą.</translation>
    </message>
    <message>
        <source>The two-minute shortcut gives %1 gross.</source>
        <translation>Skrócona metoda dwuminutowa daje %1 brutto.</translation>
    </message>
    <message>
        <source>The metered volume was not corrected to standard conditions; at usual pressures that makes the heat input look about 2 % too small.</source>
        <translation>Zmierzonej objętości nie przeliczono na warunki normalne; przy zwykłych ciśnieniach obciążenie cieplne wydaje się przez to o około 2 % za małe.</translation>
    </message>
    <message>
        <source>The metered volume was corrected by the fixed factor of bills, %1.</source>
        <translation>Zmierzoną objętość przeliczono stałym współczynnikiem z rachunków, %1.</translation>
    </message>
    <message>
        <source>The metered volume was corrected by pressure, temperature and altitude, factor %1.</source>
        <translation>Zmierzoną objętość przeliczono według ciśnienia, temperatury i wysokości, współczynnik %1.</translation>
    </message>
    <message>
        <source>%1 falls off between meter and appliance; up to %2 is allowed, and it is known to ±%3.</source>
        <translation>Między gazomierzem a urządzeniem spada %1; dopuszcza się do %2, a znane jest z dokładnością ±%3.</translation>
    </message>
    <message>
        <source>%1 falls off between meter and appliance, not above %2, but with less than the full load. Read it again with every appliance at its high load.</source>
        <translation>Między gazomierzem a urządzeniem spada %1, nie powyżej %2, ale przy niepełnym obciążeniu. Odczytać ponownie, gdy każde urządzenie ma wysokie obciążenie.</translation>
    </message>
    <message>
        <source>%1 falls off between meter and appliance; %2 is allowed (known to ±%3). Look for a valve not fully open, a blockage, or pipe too small.</source>
        <translation>Między gazomierzem a urządzeniem spada %1; dopuszcza się %2 (znane z dokładnością ±%3). Szukać niecałkiem otwartego zaworu, zatoru lub za cienkiej rury.</translation>
    </message>
    <message>
        <source>Say what was running while the pressures were read.</source>
        <translation>Podać, co pracowało podczas odczytu ciśnień.</translation>
    </message>
    <message>
        <source>The standing pressure, %1, is below the working pressure, %2. Read both again.</source>
        <translation>Ciśnienie statyczne, %1, jest niższe niż robocze, %2. Odczytać oba ponownie.</translation>
    </message>
    <message>
        <source>The working pressure counts with the burner at full rate. Set it to maximum and read again.</source>
        <translation>Ciśnienie robocze liczy się przy pełnej mocy palnika. Ustawić na maksimum i odczytać ponownie.</translation>
    </message>
    <message>
        <source>%1 is too near an end of %2 to %3 to tell. Read it again with a finer or better gauge.</source>
        <translation>%1 jest zbyt blisko końca przedziału %2 do %3, aby rozstrzygnąć. Odczytać ponownie dokładniejszym lub lepszym manometrem.</translation>
    </message>
    <message>
        <source>Only the maker&apos;s figure can judge the burner pressure. Enter it from the maker&apos;s instructions.</source>
        <translation>Ciśnienie na palniku można ocenić tylko według danych producenta. Wpisać je z instrukcji producenta.</translation>
    </message>
    <message>
        <source>On average %1 at the meter, within %2 to %3.</source>
        <translation>Średnio %1 przy gazomierzu, w przedziale %2 do %3.</translation>
    </message>
    <message>
        <source>On average %1 at the meter, outside %2 to %3. Tell the gas transporter or the meter operator if it stays so.</source>
        <translation>Średnio %1 przy gazomierzu, poza przedziałem %2 do %3. Jeśli tak pozostanie, powiadomić operatora sieci gazowej lub gazomierza.</translation>
    </message>
    <message>
        <source>The average was taken over %1; %2 are asked for.</source>
        <translation>Średnią wyznaczono z %1; wymagane jest %2.</translation>
    </message>
    <message>
        <source>For information: a proposal of 2019, which differs from 19 to 23 mbar at the meter. Write down which one was used.</source>
        <translation>Dla informacji: propozycja z 2019 roku, różna od 19 do 23 mbar przy gazomierzu. Zapisać, której użyto.</translation>
    </message>
    <message>
        <source>%1 hot water, not below the maker&apos;s %2 (known to ±%3).</source>
        <translation>Ciepła woda %1, nie poniżej %2 producenta (znane z dokładnością ±%3).</translation>
    </message>
    <message>
        <source>%1 hot water, below the maker&apos;s %2 (known to ±%3). Check the heat input, the flow setting, and the heat exchanger for scale.</source>
        <translation>Ciepła woda %1, poniżej %2 producenta (znane z dokładnością ±%3). Sprawdzić obciążenie cieplne, nastawę przepływu i wymiennik ciepła pod kątem kamienia.</translation>
    </message>
    <message>
        <source>The water takes up %1. Enter the maker&apos;s figure to have it judged.</source>
        <translation>Woda odbiera %1. Wpisać wartość producenta, aby można było ocenić.</translation>
    </message>
    <message>
        <source>Hot water counts with the burner at its maximum: say so, or open the tap further and read again.</source>
        <translation>Ciepła woda liczy się przy maksymalnej mocy palnika: podać to albo otworzyć kran szerzej i odczytać ponownie.</translation>
    </message>
    <message>
        <source>The water takes up %1.</source>
        <translation>Woda odbiera %1.</translation>
    </message>
    <message>
        <source>Hot water takes up %1 of the net heat input, within the usual %2 to %3.</source>
        <translation>Ciepła woda odbiera %1 obciążenia cieplnego netto, w zwykłym przedziale %2 do %3.</translation>
    </message>
    <message>
        <source>Hot water takes up %1 of the net heat input, outside the usual %2 to %3. Read the flow and both temperatures again, then time the gas again.</source>
        <translation>Ciepła woda odbiera %1 obciążenia cieplnego netto, poza zwykłym przedziałem %2 do %3. Odczytać ponownie przepływ i obie temperatury, a potem ponownie zmierzyć gaz.</translation>
    </message>
    <message>
        <source>Flue, combustion air, pressure or heat input, and operation were examined.</source>
        <translation>Sprawdzono odprowadzenie spalin, powietrze do spalania, ciśnienie lub obciążenie cieplne oraz działanie.</translation>
    </message>
    <message>
        <source>26(9)(a): Examine whether the flue is effective, or say that there is none.</source>
        <translation>26(9)(a): Sprawdzić, czy odprowadzenie spalin jest skuteczne, albo podać, że go nie ma.</translation>
    </message>
    <message>
        <source>26(9)(a): The flue is not effective. Leave the appliance off until it is.</source>
        <translation>26(9)(a): Odprowadzenie spalin nie jest skuteczne. Pozostawić urządzenie wyłączone, dopóki nie będzie.</translation>
    </message>
    <message>
        <source>26(9)(b): Examine the supply of combustion air.</source>
        <translation>26(9)(b): Sprawdzić dopływ powietrza do spalania.</translation>
    </message>
    <message>
        <source>26(9)(b): The supply of combustion air is not right. Leave the appliance off until it is.</source>
        <translation>26(9)(b): Dopływ powietrza do spalania nie jest prawidłowy. Pozostawić urządzenie wyłączone, dopóki nie będzie.</translation>
    </message>
    <message>
        <source>26(9)(c): Read the operating pressure or the heat input. Only where neither can reasonably be read does combustion stand in, and then say why.</source>
        <translation>26(9)(c): Odczytać ciśnienie pracy lub obciążenie cieplne. Tylko gdy żadnego nie da się rozsądnie odczytać, zastępuje je spalanie, a wtedy podać dlaczego.</translation>
    </message>
    <message>
        <source>26(9)(c): Both operating pressure and heat input are needed here; one is missing.</source>
        <translation>26(9)(c): Tu potrzebne są i ciśnienie pracy, i obciążenie cieplne; jednego brakuje.</translation>
    </message>
    <message>
        <source>26(9)(c): A reading is outside its limits: see its own finding.</source>
        <translation>26(9)(c): Odczyt leży poza granicami: patrz jego ustalenie.</translation>
    </message>
    <message>
        <source>26(9)(c): A reading was taken that can not be judged yet: see its own finding.</source>
        <translation>26(9)(c): Wykonano odczyt, którego nie można jeszcze ocenić: patrz jego ustalenie.</translation>
    </message>
    <message>
        <source>26(9)(c): A reading asks for another look: see its own finding.</source>
        <translation>26(9)(c): Odczyt wymaga ponownego sprawdzenia: patrz jego ustalenie.</translation>
    </message>
    <message>
        <source>26(9)(ca): Combustion stands in only where neither operating pressure nor heat input can reasonably be read. Say why they can&apos;t, or read one of them.</source>
        <translation>26(9)(ca): Spalanie zastępuje tylko wtedy, gdy ani ciśnienia pracy, ani obciążenia cieplnego nie da się rozsądnie odczytać. Podać dlaczego albo odczytać jedno z nich.</translation>
    </message>
    <message>
        <source>26(9)(ca): Write down why neither operating pressure nor heat input could be read.</source>
        <translation>26(9)(ca): Zapisać, dlaczego nie dało się odczytać ani ciśnienia pracy, ani obciążenia cieplnego.</translation>
    </message>
    <message>
        <source>26(9)(ca): Neither operating pressure nor heat input could be read: check the combustion instead.</source>
        <translation>26(9)(ca): Nie dało się odczytać ani ciśnienia pracy, ani obciążenia cieplnego: zamiast tego sprawdzić spalanie.</translation>
    </message>
    <message>
        <source>26(9)(ca): Combustion stands in for operating pressure and heat input, with the reason written down.</source>
        <translation>26(9)(ca): Spalanie zastępuje ciśnienie pracy i obciążenie cieplne, a powód zapisano.</translation>
    </message>
    <message>
        <source>26(9)(d): Examine its operation, so that it works safely.</source>
        <translation>26(9)(d): Sprawdzić działanie, tak aby pracowało bezpiecznie.</translation>
    </message>
    <message>
        <source>26(9)(d): It does not work safely. Leave it off until it does.</source>
        <translation>26(9)(d): Nie pracuje bezpiecznie. Pozostawić wyłączone, dopóki nie będzie.</translation>
    </message>
    <message>
        <source>Tell the responsible person of the defect at once, and the owner if that is somebody else.</source>
        <translation>Natychmiast poinformować o wadzie osobę odpowiedzialną oraz właściciela, jeśli to ktoś inny.</translation>
    </message>
    <message>
        <source>Regulation 26(9) is taken not to apply: the appliance was only disconnected, or only purged without harm to it. This is from memory of 26(10): check it in the regulations.</source>
        <translation>Przyjmuje się, że Regulation 26(9) (przepis 26(9)) nie ma zastosowania: urządzenie tylko odłączono albo tylko odpowietrzono bez szkody dla niego. To z pamięci 26(10): sprawdzić w przepisach.</translation>
    </message>
    <message>
        <source>The pressure falls by %1 (give or take %3) from the meter to the appliance, within the %2 allowed at full demand.</source>
        <translation>Ciśnienie spada o %1 (z dokładnością do %3) od gazomierza do urządzenia, w granicach %2 dopuszczalnych przy pełnym poborze.</translation>
    </message>
    <message>
        <source>The pressure falls by %1 (give or take %3) from the meter to the appliance, at or too near to the %2 allowed. Read both again, on one gauge, with everything burning.</source>
        <translation>Ciśnienie spada o %1 (z dokładnością do %3) od gazomierza do urządzenia, równo lub zbyt blisko dopuszczalnych %2. Odczytać oba ponownie, jednym manometrem, gdy wszystko się pali.</translation>
    </message>
    <message>
        <source>The pressure falls by %1 (give or take %3) from the meter to the appliance, more than the %2 allowed. The pipe is too small or partly shut: look for that first.</source>
        <translation>Ciśnienie spada o %1 (z dokładnością do %3) od gazomierza do urządzenia, więcej niż dopuszczalne %2. Rura jest za cienka lub częściowo zamknięta: najpierw to sprawdzić.</translation>
    </message>
    <message>
        <source>Natural gas was taken, since no gas has been chosen. Choose the gas to have this judged.</source>
        <translation>Przyjęto gaz ziemny, bo nie wybrano gazu. Wybrać gaz, aby można było ocenić.</translation>
    </message>
    <message>
        <source>The maker&apos;s figure can&apos;t be used as it was typed, and it decides before any other. A range needs both ends, the lower one first, in one unit. Put it right, or clear it where the maker gives none.</source>
        <translation>Wartości producenta nie da się użyć tak, jak ją wpisano, a rozstrzyga przed każdą inną. Przedział wymaga obu końców, najpierw niższego, w jednej jednostce. Poprawić albo usunąć, jeśli producent jej nie podaje.</translation>
    </message>
    <message>
        <source>Two gauges may differ by more than this. Read both pressures on one gauge, or enter the gauges&apos; accuracy.</source>
        <translation>Dwa manometry mogą się różnić bardziej. Odczytać oba ciśnienia jednym manometrem albo wpisać dokładność manometrów.</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio %1 (± %3), at most %2 allowed.</source>
        <translation>Stosunek CO/CO₂ %1 (± %3), dopuszczalne co najwyżej %2.</translation>
    </message>
    <message>
        <source>The CO/CO₂ ratio is %1 (± %3); at most %2 is allowed.</source>
        <translation>Stosunek CO/CO₂ wynosi %1 (± %3); dopuszczalne jest co najwyżej %2.</translation>
    </message>
    <message>
        <source>CO %1 (± %3), at most %2 allowed.</source>
        <translation>CO %1 (± %3), dopuszczalne co najwyżej %2.</translation>
    </message>
    <message>
        <source>CO is %1 (± %3); at most %2 is allowed.</source>
        <translation>CO wynosi %1 (± %3); dopuszczalne jest co najwyżej %2.</translation>
    </message>
    <message>
        <source>CO₂ %1 lies between %2 and %3, as the maker wants it.</source>
        <translation>CO₂ %1 leży między %2 a %3, jak wymaga producent.</translation>
    </message>
    <message>
        <source>CO₂ %1 lies outside the maker&apos;s %2 to %3.</source>
        <translation>CO₂ %1 leży poza przedziałem producenta %2 do %3.</translation>
    </message>
    <message>
        <source>CO₂ %1 is at the edge of the maker&apos;s %2 to %3, too near to tell: consult the maker.</source>
        <translation>CO₂ %1 jest na skraju przedziału producenta %2 do %3, zbyt blisko, aby rozstrzygnąć: zapytać producenta.</translation>
    </message>
    <message>
        <source>%1 is at the limit of %2, too near to tell with ± %3: that is no pass; consult the maker.</source>
        <translation>%1 jest na granicy %2, przy ± %3 zbyt blisko, aby rozstrzygnąć: to nie spełnia wymagań; zapytać producenta.</translation>
    </message>
    <message>
        <source>A hotplate has no limit of its ratio: judge it by its flame and by the CO in the room.</source>
        <translation>Płyta grzejna nie ma granicy stosunku: oceniać po płomieniu i CO w pomieszczeniu.</translation>
    </message>
    <message>
        <source>No standard&apos;s figure is known here for this kind of appliance: take the maker&apos;s and enter it with the appliance.</source>
        <translation>Dla tego rodzaju urządzenia nie jest tu znana wartość z normy: wziąć wartość producenta i wpisać przy urządzeniu.</translation>
    </message>
    <message>
        <source>Say what kind of appliance it is: each kind has limits of its own.</source>
        <translation>Podać rodzaj urządzenia: każdy rodzaj ma własne granice.</translation>
    </message>
    <message>
        <source>No CO₂ was read, so there was no flue gas at the probe: check the probe and measure again.</source>
        <translation>Nie odczytano CO₂, więc przy sondzie nie było spalin: sprawdzić sondę i zmierzyć ponownie.</translation>
    </message>
    <message>
        <source>A reading below nought: set the analyser to fresh air outdoors and measure again.</source>
        <translation>Odczyt poniżej zera: ustawić analizator na świeżym powietrzu na zewnątrz i zmierzyć ponownie.</translation>
    </message>
    <message>
        <source>The limit is in a unit that the reading can&apos;t be held against: enter it in ppm.</source>
        <translation>Wartość graniczna jest w jednostce, z którą odczytu nie da się porównać: wpisać ją w ppm.</translation>
    </message>
    <message>
        <source>The readings at maximum rate are missing: both rates are needed.</source>
        <translation>Brakuje odczytów przy największej mocy: potrzebne są obie moce.</translation>
    </message>
    <message>
        <source>The readings at minimum rate are missing: both rates are needed.</source>
        <translation>Brakuje odczytów przy najmniejszej mocy: potrzebne są obie moce.</translation>
    </message>
    <message>
        <source>Combustion is within its limits at every rate that was measured.</source>
        <translation>Spalanie mieści się w granicach przy każdej zmierzonej mocy.</translation>
    </message>
    <message>
        <source>First check the joints and seals of the flue and where the probe sits; then measure again.</source>
        <translation>Najpierw sprawdzić połączenia i uszczelnienia odprowadzenia spalin oraz położenie sondy; potem zmierzyć ponownie.</translation>
    </message>
    <message>
        <source>First check where the probe sits and that the burner is hot and steady; then measure again.</source>
        <translation>Najpierw sprawdzić położenie sondy i czy palnik jest gorący i stabilny; potem zmierzyć ponownie.</translation>
    </message>
    <message>
        <source>If it is still beyond the limit: turn the appliance off, make it safe and call its maker.</source>
        <translation>Jeśli nadal przekracza granicę: wyłączyć urządzenie, zabezpieczyć je i wezwać producenta.</translation>
    </message>
    <message>
        <source>The analyser worked CO₂ out from O₂: it is right only if the analyser is set to this fuel.</source>
        <translation>Analizator obliczył CO₂ z O₂: jest to poprawne tylko, gdy analizator ustawiono na to paliwo.</translation>
    </message>
    <message>
        <source>Not said that the analyser was set to fresh air outdoors: do so and measure again.</source>
        <translation>Nie podano, że analizator ustawiono na świeżym powietrzu na zewnątrz: zrobić to i zmierzyć ponownie.</translation>
    </message>
    <message>
        <source>O₂ %1 (± %3) at the air inlet; at least %2 is needed.</source>
        <translation>O₂ %1 (± %3) na wlocie powietrza; potrzeba co najmniej %2.</translation>
    </message>
    <message>
        <source>Only %1 O₂ (± %3) at the air inlet, at least %2 wanted: flue gas may be getting into the air.</source>
        <translation>Tylko %1 O₂ (± %3) na wlocie powietrza, potrzeba co najmniej %2: do powietrza mogą dostawać się spaliny.</translation>
    </message>
    <message>
        <source>CO₂ %1 (± %3) at the air inlet; it must be below %2.</source>
        <translation>CO₂ %1 (± %3) na wlocie powietrza; musi być poniżej %2.</translation>
    </message>
    <message>
        <source>CO₂ %1 (± %3) at the air inlet, below %2 wanted: flue gas may be getting into the air.</source>
        <translation>CO₂ %1 (± %3) na wlocie powietrza, powinno być poniżej %2: do powietrza mogą dostawać się spaliny.</translation>
    </message>
    <message>
        <source>O₂ and CO₂ belong to this fuel: %1 off its line (± %3), up to %2 is usual.</source>
        <translation>O₂ i CO₂ odpowiadają temu paliwu: %1 od jego linii (± %3), zwykle do %2.</translation>
    </message>
    <message>
        <source>O₂ and CO₂ do not belong together with this fuel: %1 off its line (± %3), up to %2 is usual.</source>
        <translation>O₂ i CO₂ nie pasują do siebie przy tym paliwie: %1 od jego linii (± %3), zwykle do %2.</translation>
    </message>
    <message>
        <source>Air drawn in through a loose hose or probe thins both alike: this check can&apos;t see it.</source>
        <translation>Powietrze zassane przez luźny wąż lub sondę rozcieńcza oba tak samo: to sprawdzenie tego nie wykryje.</translation>
    </message>
    <message>
        <source>The analyser worked CO₂ out from O₂, so this shows only which fuel it was set to.</source>
        <translation>Analizator obliczył CO₂ z O₂, więc to pokazuje tylko, na jakie paliwo był ustawiony.</translation>
    </message>
    <message>
        <source>O₂ %1 is more than fresh air holds: set the analyser to fresh air outdoors and measure again.</source>
        <translation>O₂ %1 to więcej niż w świeżym powietrzu: ustawić analizator na świeżym powietrzu na zewnątrz i zmierzyć ponownie.</translation>
    </message>
    <message>
        <source>CO₂ %1 is more than this fuel can give (%2): check the fuel set on the analyser.</source>
        <translation>CO₂ %1 to więcej, niż może dać to paliwo (%2): sprawdzić paliwo ustawione w analizatorze.</translation>
    </message>
    <message>
        <source>They would fit %1: check the fuel set on the analyser.</source>
        <translation>Pasowałyby do %1: sprawdzić paliwo ustawione w analizatorze.</translation>
    </message>
    <message>
        <source>O₂ %2 would fit: check that %1 was typed right.</source>
        <translation>Pasowałoby O₂ %2: sprawdzić, czy %1 wpisano poprawnie.</translation>
    </message>
    <message>
        <source>CO₂ %2 would fit: check that %1 was typed right.</source>
        <translation>Pasowałoby CO₂ %2: sprawdzić, czy %1 wpisano poprawnie.</translation>
    </message>
    <message>
        <source>O₂ and CO₂ would fit if they were exchanged: check which is which.</source>
        <translation>O₂ i CO₂ pasowałyby po zamianie: sprawdzić, które jest które.</translation>
    </message>
    <message>
        <source>No usual slip explains it: read O₂ and CO₂ again at the same moment, and check the hose, the filter and the fuel set.</source>
        <translation>Żadna zwykła pomyłka tego nie wyjaśnia: odczytać O₂ i CO₂ ponownie w tej samej chwili i sprawdzić wąż, filtr oraz ustawione paliwo.</translation>
    </message>
    <message>
        <source>What O₂ and CO₂ belong together depends on the mixture of this gas, which is not known here: they are not held against each other.</source>
        <translation>To, jakie O₂ i CO₂ do siebie pasują, zależy od składu tego gazu, który nie jest tu znany: nie porównuje się ich.</translation>
    </message>
    <message>
        <source>The ratio on the printout, %1, is that of its CO and CO₂ (%2).</source>
        <translation>Stosunek na wydruku, %1, odpowiada jego CO i CO₂ (%2).</translation>
    </message>
    <message>
        <source>The ratio on the printout is %1, but its CO and CO₂ give %2: check what was typed.</source>
        <translation>Stosunek na wydruku to %1, ale jego CO i CO₂ dają %2: sprawdzić, co wpisano.</translation>
    </message>
    <message>
        <source>The flue at %1 is no hotter than the air at %2: check whether the net temperature was typed for the flue&apos;s.</source>
        <translation>Spaliny o temperaturze %1 nie są gorętsze niż powietrze o temperaturze %2: sprawdzić, czy zamiast temperatury spalin nie wpisano temperatury netto.</translation>
    </message>
    <message>
        <source>Excess air %1 (exact for the fuel); %2 by the simple formula.</source>
        <translation>Nadmiar powietrza %1 (dokładnie dla paliwa); %2 według prostego wzoru.</translation>
    </message>
    <message>
        <source>CO %1 free of air, %2 at 3 % O₂.</source>
        <translation>CO %1 bez powietrza, %2 przy 3 % O₂.</translation>
    </message>
    <message>
        <source>CO %1 of heat input by the net calorific value, %2 by the gross.</source>
        <translation>CO %1 obciążenia cieplnego według wartości kalorycznej netto, %2 według brutto.</translation>
    </message>
    <message>
        <source>Net efficiency %1 by the Siegert formula: flue loss %2, dry flue gas, nothing condensed.</source>
        <translation>Sprawność netto %1 według wzoru Siegerta: strata kominowa %2, suche spaliny, nic się nie skropliło.</translation>
    </message>
    <message>
        <source>Gross efficiency %1 by the losses of BS 845: dry gas %2, water vapour %3, unburned gas %4; casing losses not counted.</source>
        <translation>Sprawność brutto %1 według strat z BS 845: suchy gaz %2, para wodna %3, niespalony gaz %4; strat obudowy nie wliczono.</translation>
    </message>
    <message>
        <source>At %1 the flue gas is below its dew point of %2: these formulas do not count what condensed.</source>
        <translation>Przy %1 spaliny są poniżej punktu rosy %2: te wzory nie uwzględniają tego, co się skropliło.</translation>
    </message>
    <message>
        <source>All the water&apos;s heat would be %1 of the net input; a gas analyser can&apos;t measure how much of it was won.</source>
        <translation>Całe ciepło wody to %1 obciążenia netto; analizator spalin nie zmierzy, ile z niego odzyskano.</translation>
    </message>
    <message>
        <source>IGEM/UP/1B applies: the installation lies within its scope.</source>
        <translation>Właściwa jest IGEM/UP/1B: instalacja mieści się w jej zakresie.</translation>
    </message>
    <message>
        <source>The pressure of %1 is beyond the %2 of IGE/UP/1 too: no standard here covers it. Ask the designer which one does.</source>
        <translation>Ciśnienie %1 przekracza też %2 z IGE/UP/1: żadna norma tutaj go nie obejmuje. Zapytać projektanta, która obejmuje.</translation>
    </message>
    <message>
        <source>Movements from %1 can be read on this gauge.</source>
        <translation>Tym manometrem można odczytać zmiany od %1.</translation>
    </message>
    <message>
        <source>The table of readable movements has no gauge of this kind, range and decimals. Use a gauge that it has, or correct what was said of this one.</source>
        <translation>Tabela odczytywalnych zmian nie zawiera manometru tego rodzaju, zakresu i liczby miejsc. Użyć manometru, który zawiera, albo poprawić dane tego.</translation>
    </message>
    <message>
        <source>The test needs %1; this gauge may be used for up to %2.</source>
        <translation>Badanie wymaga %1; tego manometru można używać do %2.</translation>
    </message>
    <message>
        <source>The test needs %1, longer than the %2 that this gauge allows. Split the installation or use a finer gauge.</source>
        <translation>Badanie wymaga %1, dłużej niż %2, na które pozwala ten manometr. Podzielić instalację albo użyć dokładniejszego manometru.</translation>
    </message>
    <message>
        <source>The test needs %1. How long a test on this gauge may be is not in the rule book: enter it from your own copy of the standard.</source>
        <translation>Badanie wymaga %1. W księdze reguł nie ma, jak długie może być badanie tym manometrem: wpisać z własnego egzemplarza normy.</translation>
    </message>
    <message>
        <source>Say what kind of place the pipework runs through.</source>
        <translation>Podać, przez jakiego rodzaju miejsce biegną rury.</translation>
    </message>
    <message>
        <source>Enter the volume of the room: what may leak goes by it.</source>
        <translation>Wpisać objętość pomieszczenia: od niej zależy dopuszczalny wyciek.</translation>
    </message>
    <message>
        <source>Say whether the room is adequately ventilated.</source>
        <translation>Podać, czy pomieszczenie jest dostatecznie wentylowane.</translation>
    </message>
    <message>
        <source>A room that is not adequately ventilated counts as type A, the strictest.</source>
        <translation>Pomieszczenie niedostatecznie wentylowane liczy się jako typ A, najsurowszy.</translation>
    </message>
    <message>
        <source>With %1 of room the figure for a large room is the stricter one and is used.</source>
        <translation>Przy pomieszczeniu %1 wartość dla dużego pomieszczenia jest surowsza i jej się używa.</translation>
    </message>
    <message>
        <source>Which rooms count as type C is not in the rule book: enter the least volume from your own copy of the standard. This room has %1.</source>
        <translation>W księdze reguł nie ma, które pomieszczenia liczą się jako typ C: wpisać najmniejszą objętość z własnego egzemplarza normy. To pomieszczenie ma %1.</translation>
    </message>
    <message>
        <source>The room of %1 is smaller than the %2 from which it would count as type C.</source>
        <translation>Pomieszczenie %1 jest mniejsze niż %2, od których liczyłoby się jako typ C.</translation>
    </message>
    <message>
        <source>Say whether the test was made with the fuel gas, air or nitrogen.</source>
        <translation>Podać, czy badanie wykonano gazem palnym, powietrzem, czy azotem.</translation>
    </message>
    <message>
        <source>Enter the operating pressure: the pressure of the test goes by it.</source>
        <translation>Wpisać ciśnienie pracy: od niego zależy ciśnienie próbne.</translation>
    </message>
    <message>
        <source>Up to %1 may leak, with no smell of gas.</source>
        <translation>Dopuszczalny jest wyciek do %1, bez zapachu gazu.</translation>
    </message>
    <message>
        <source>The fall is worth a leak of %1; %2 is permitted.</source>
        <translation>Spadek odpowiada wyciekowi %1; dopuszczalne jest %2.</translation>
    </message>
    <message>
        <source>The fall is worth a leak of %1, more than the %2 permitted.</source>
        <translation>Spadek odpowiada wyciekowi %1, więcej niż dopuszczalne %2.</translation>
    </message>
    <message>
        <source>A leak of %1, give or take %3, is too near the permitted %2 to tell. Test for longer, or use a finer gauge.</source>
        <translation>Wyciek %1, z dokładnością do %3, jest zbyt blisko dopuszczalnych %2, aby rozstrzygnąć. Badać dłużej albo użyć dokładniejszego manometru.</translation>
    </message>
    <message>
        <source>The smallest leak that this test could show is %1.</source>
        <translation>Najmniejszy wyciek, jaki mogło wykazać to badanie, to %1.</translation>
    </message>
    <message>
        <source>Let by from %1; about half of the operating pressure is %2.</source>
        <translation>Przepuszczanie zaworu od %1; około połowy ciśnienia pracy to %2.</translation>
    </message>
    <message>
        <source>Let-by from %1 shows nothing: it must start well below the operating pressure of %2. Repeat it.</source>
        <translation>Próba przepuszczania zaworu od %1 niczego nie wykazuje: musi zaczynać się dużo poniżej ciśnienia pracy %2. Powtórzyć.</translation>
    </message>
    <message>
        <source>Held from %1; %2 is needed.</source>
        <translation>Utrzymywano od %1; potrzeba %2.</translation>
    </message>
    <message>
        <source>Held from %1; %2 is needed. Repeat the strength test.</source>
        <translation>Utrzymywano od %1; potrzeba %2. Powtórzyć badanie wytrzymałości.</translation>
    </message>
    <message>
        <source>From the maximum incidental pressure %1 is needed, from the maximum operating pressure %2: the higher decides.</source>
        <translation>Z największego ciśnienia przypadkowego wynika %1, z największego ciśnienia pracy %2: rozstrzyga wyższe.</translation>
    </message>
    <message>
        <source>The maximum incidental pressure of %1 can&apos;t be below the maximum operating pressure of %2. Correct them.</source>
        <translation>Największe ciśnienie przypadkowe %1 nie może być niższe niż największe ciśnienie pracy %2. Poprawić je.</translation>
    </message>
    <message>
        <source>Settled for %1 and held for %2, long enough.</source>
        <translation>Stabilizowano przez %1 i utrzymywano przez %2, wystarczająco długo.</translation>
    </message>
    <message>
        <source>No readable fall (change %1, readable from %2).</source>
        <translation>Brak odczytywalnego spadku (zmiana %1, odczytywalna od %2).</translation>
    </message>
    <message>
        <source>A fall of %1 is within the %2 allowed.</source>
        <translation>Spadek o %1 mieści się w dopuszczalnych %2.</translation>
    </message>
    <message>
        <source>The pressure fell by %1 (%2 allowed). Find the leak or the weakness, put it right and repeat.</source>
        <translation>Ciśnienie spadło o %1 (dopuszczalne %2). Znaleźć nieszczelność lub słabe miejsce, naprawić i powtórzyć.</translation>
    </message>
    <message>
        <source>A strength test is made with air or nitrogen, never with fuel gas. Make safe and repeat it.</source>
        <translation>Badanie wytrzymałości wykonuje się powietrzem lub azotem, nigdy gazem palnym. Zabezpieczyć i powtórzyć.</translation>
    </message>
    <message>
        <source>Meters, regulators and valves not rated for the pressure: taken off or isolated.</source>
        <translation>Gazomierze, reduktory i zawory nieprzystosowane do tego ciśnienia: zdjęte lub odcięte.</translation>
    </message>
    <message>
        <source>Take off or isolate meters, regulators and valves that are not rated for the test pressure.</source>
        <translation>Zdjąć lub odciąć gazomierze, reduktory i zawory nieprzystosowane do ciśnienia próbnego.</translation>
    </message>
    <message>
        <source>Due by %1.</source>
        <translation>Termin do %1.</translation>
    </message>
    <message>
        <source>What was read leaves open whether it is due by %1 or by %2. Keep the first date, or ask.</source>
        <translation>Z tego, co przeczytano, nie wynika, czy termin jest do %1, czy do %2. Trzymać się wcześniejszej daty albo zapytać.</translation>
    </message>
    <message>
        <source>It was due by %1. Have it checked now.</source>
        <translation>Termin był do %1. Zlecić kontrolę teraz.</translation>
    </message>
    <message>
        <source>Say in which country: the law differs.</source>
        <translation>Podać kraj: prawo się różni.</translation>
    </message>
    <message>
        <source>Enter when the appliance was installed, when the lease begins, or the date from which the twelve months run.</source>
        <translation>Wpisać, kiedy urządzenie zamontowano, kiedy zaczyna się najem albo datę, od której biegnie dwanaście miesięcy.</translation>
    </message>
    <message>
        <source>The check on %1 lies before %2. Correct the dates.</source>
        <translation>Kontrola dnia %1 przypada przed %2. Poprawić daty.</translation>
    </message>
    <message>
        <source>The check on %1 lies in the two months that end with %2: it counts as made on that date (regulation 36A(1)).</source>
        <translation>Kontrola dnia %1 mieści się w dwóch miesiącach kończących się %2: liczy się jak wykonana w tym dniu (regulation 36A(1), przepis 36A(1)).</translation>
    </message>
    <message>
        <source>The check on %1 came before the two months that end with %2: twelve months run from it anew.</source>
        <translation>Kontrola dnia %1 była przed dwoma miesiącami kończącymi się %2: od niej biegnie na nowo dwanaście miesięcy.</translation>
    </message>
    <message>
        <source>Whether the check on %1 lies in the two months that end with %2 goes by how they are counted. Ask, or keep the earlier date.</source>
        <translation>To, czy kontrola dnia %1 mieści się w dwóch miesiącach kończących się %2, zależy od sposobu ich liczenia. Zapytać albo trzymać się wcześniejszej daty.</translation>
    </message>
    <message>
        <source>The check on %1 was in time for %2.</source>
        <translation>Kontrola dnia %1 była w terminie %2.</translation>
    </message>
    <message>
        <source>The check on %1 came after %2, when it was due.</source>
        <translation>Kontrola dnia %1 była po %2, kiedy minął termin.</translation>
    </message>
    <message>
        <source>The check on %1 used the one time that a first check may be put off, to %2.</source>
        <translation>Kontrola dnia %1 wykorzystała jedyne dozwolone przesunięcie pierwszej kontroli, do %2.</translation>
    </message>
    <message>
        <source>Twelve months from the installation on %1 (in Great Britain regulation 36(3)(a)).</source>
        <translation>Dwanaście miesięcy od montażu dnia %1 (w Wielkiej Brytanii regulation 36(3)(a), przepis 36(3)(a)).</translation>
    </message>
    <message>
        <source>A check is to be made in the twelve months before the lease begins on %1 (in Great Britain regulation 36(3)(b)).</source>
        <translation>Kontrolę trzeba wykonać w dwunastu miesiącach przed rozpoczęciem najmu dnia %1 (w Wielkiej Brytanii regulation 36(3)(b), przepis 36(3)(b)).</translation>
    </message>
    <message>
        <source>Twelve months from %1.</source>
        <translation>Dwanaście miesięcy od %1.</translation>
    </message>
    <message>
        <source>Twelve months from %1, the date for which the check counts (regulation 36A(1)).</source>
        <translation>Dwanaście miesięcy od %1, dnia, na który kontrola się liczy (regulation 36A(1), przepis 36A(1)).</translation>
    </message>
    <message>
        <source>Twelve months from the check on %1, or from %2 if it counts for that date (regulation 36A(1)).</source>
        <translation>Dwanaście miesięcy od kontroli dnia %1 albo od %2, jeśli liczy się na ten dzień (regulation 36A(1), przepis 36A(1)).</translation>
    </message>
    <message>
        <source>Twelve months from the check on %1; whether they run from %2, when the lease begins, was not read.</source>
        <translation>Dwanaście miesięcy od kontroli dnia %1; nie przeczytano, czy biegną od %2, kiedy zaczyna się najem.</translation>
    </message>
    <message>
        <source>The first check was due by %1; once, it may be put off to %2 to come with the others.</source>
        <translation>Pierwsza kontrola miała termin do %1; raz można ją przesunąć do %2, aby wypadła z innymi.</translation>
    </message>
    <message>
        <source>How the next date follows after a first check that was put off was not read (regulation 36A(2) and (3)).</source>
        <translation>Nie przeczytano, jak następuje kolejny termin po przesuniętej pierwszej kontroli (regulation 36A(2) and (3), przepis 36A(2) i (3)).</translation>
    </message>
    <message>
        <source>A check from %1 to %2 keeps the date; an earlier one starts twelve months anew (regulation 36A(1)).</source>
        <translation>Kontrola od %1 do %2 zachowuje datę; wcześniejsza rozpoczyna dwanaście miesięcy od nowa (regulation 36A(1), przepis 36A(1)).</translation>
    </message>
    <message>
        <source>Northern Ireland&apos;s regulations (SR 2004/63) were not read: this is from memory. Look them up.</source>
        <translation>Przepisów Irlandii Północnej (SR 2004/63) nie przeczytano: to z pamięci. Sprawdzić je.</translation>
    </message>
    <message>
        <source>An existing tenant&apos;s copy of the record is due by %1, 28 days after the check (regulation 36(6)).</source>
        <translation>Kopia protokołu dla obecnego najemcy ma termin do %1, 28 dni po kontroli (regulation 36(6), przepis 36(6)).</translation>
    </message>
    <message>
        <source>A new tenant&apos;s copy of the record is due before they move in on %1 (regulation 36(6)).</source>
        <translation>Nowy najemca ma otrzymać kopię protokołu, zanim wprowadzi się dnia %1 (regulation 36(6), przepis 36(6)).</translation>
    </message>
    <message>
        <source>A new tenant&apos;s copy of the record is due before they move in (regulation 36(6)).</source>
        <translation>Nowy najemca ma otrzymać kopię protokołu przed wprowadzeniem się (regulation 36(6), przepis 36(6)).</translation>
    </message>
    <message>
        <source>This record may be given to a new tenant up to %1, twelve months after the check.</source>
        <translation>Ten protokół można dać nowemu najemcy do %1, dwanaście miesięcy po kontroli.</translation>
    </message>
    <message>
        <source>Keep the record to %1.</source>
        <translation>Przechowywać protokół do %1.</translation>
    </message>
    <message>
        <source>Keep the record until two further checks have been made, and to %1 at least (regulation 36(3)(c)).</source>
        <translation>Przechowywać protokół, aż zostaną wykonane dwie dalsze kontrole, i co najmniej do %1 (regulation 36(3)(c), przepis 36(3)(c)).</translation>
    </message>
    <message>
        <source>The pressure drop to the end of section %4 is %1 (give or take %3), within the %2 allowed.</source>
        <translation>Spadek ciśnienia do końca odcinka %4 wynosi %1 (z dokładnością do %3), w granicach dopuszczalnych %2.</translation>
    </message>
    <message>
        <source>The pressure drop to the end of section %4 is %1 (give or take %3), at or too near to the %2 allowed. Measure lengths and flows again, or take the larger pipe.</source>
        <translation>Spadek ciśnienia do końca odcinka %4 wynosi %1 (z dokładnością do %3), równo lub zbyt blisko dopuszczalnych %2. Zmierzyć ponownie długości i przepływy albo wziąć większą rurę.</translation>
    </message>
    <message>
        <source>The pressure drop to the end of section %4 is %1 (give or take %3), more than the %2 allowed. Enlarge the pipe, or feed the appliance another way.</source>
        <translation>Spadek ciśnienia do końca odcinka %4 wynosi %1 (z dokładnością do %3), więcej niż dopuszczalne %2. Powiększyć rurę albo zasilić urządzenie inaczej.</translation>
    </message>
    <message>
        <source>No pressure drop can be worked out: the flow at the end of section %1, or of a pipe that it feeds, is missing. Enter the appliance&apos;s heat input; a capped end draws 0.</source>
        <translation>Spadku ciśnienia nie da się obliczyć: brakuje przepływu na końcu odcinka %1 lub rury, którą zasila. Wpisać obciążenie cieplne urządzenia; zaślepiony koniec pobiera 0.</translation>
    </message>
    <message>
        <source>No pressure drop can be worked out: the tube of section %1 is not said or has no known bore.</source>
        <translation>Spadku ciśnienia nie da się obliczyć: rury odcinka %1 nie podano albo nie ma znanej średnicy wewnętrznej.</translation>
    </message>
    <message>
        <source>No pressure drop can be worked out: the length of section %1 is missing or can&apos;t be used.</source>
        <translation>Spadku ciśnienia nie da się obliczyć: brakuje długości odcinka %1 albo nie da się jej użyć.</translation>
    </message>
    <message>
        <source>No pressure drop can be worked out: the rule book has no equivalent length for a fitting of section %1. Type what its fittings are worth in metres of pipe.</source>
        <translation>Spadku ciśnienia nie da się obliczyć: księga reguł nie ma długości zastępczej dla kształtki odcinka %1. Wpisać, ilu metrom rury odpowiadają jej kształtki.</translation>
    </message>
    <message>
        <source>No pressure drop can be worked out: flow and size of section %1 lie outside what the formula is good for. Check both.</source>
        <translation>Spadku ciśnienia nie da się obliczyć: przepływ i średnica odcinka %1 wykraczają poza zakres wzoru. Sprawdzić oba.</translation>
    </message>
    <message>
        <source>No pressure drop can be worked out: the density and viscosity of this gas are not known. Enter them.</source>
        <translation>Spadku ciśnienia nie da się obliczyć: gęstość i lepkość tego gazu nie są znane. Wpisać je.</translation>
    </message>
    <message>
        <source>Fittings are counted with the equivalent lengths of %1.</source>
        <translation>Kształtki liczy się z długościami zastępczymi według %1.</translation>
    </message>
    <message>
        <source>Fittings are counted with equivalent lengths that were typed in.</source>
        <translation>Kształtki liczy się z wpisanymi długościami zastępczymi.</translation>
    </message>
    <message>
        <source>The rule book has no pipe efficiency: the pipe is taken to pass only %1 of what the formula for smooth pipe gives.</source>
        <translation>Księga reguł nie ma sprawności rury: przyjmuje się, że rura przepuszcza tylko %1 tego, co daje wzór dla gładkiej rury.</translation>
    </message>
    <message>
        <source>Most is lost in section %1: %2.</source>
        <translation>Najwięcej traci się w odcinku %1: %2.</translation>
    </message>
    <message>
        <source>Without the fittings of section %3, the pressure drop to the end of section %4 is at least %1; %2 is allowed. Say what fittings it has, or none.</source>
        <translation>Bez kształtek odcinka %3 spadek ciśnienia do końca odcinka %4 wynosi co najmniej %1; dopuszcza się %2. Podać, jakie ma kształtki, albo że żadnych.</translation>
    </message>
    <message>
        <source>No pressure drop can be worked out: which pipe goes on from which is not clear. Put right the column that says so.</source>
        <translation>Spadku ciśnienia nie da się obliczyć: nie jest jasne, która rura odchodzi od której. Poprawić kolumnę, która to podaje.</translation>
    </message>
    <message>
        <source>The fittings of section %1 are not said or can&apos;t be read: the drop is at least this.</source>
        <translation>Kształtek odcinka %1 nie podano albo nie da się ich odczytać: spadek wynosi co najmniej tyle.</translation>
    </message>
    <message>
        <source>Change section %1 from %2 to %3.</source>
        <translation>Zmienić odcinek %1 z %2 na %3.</translation>
    </message>
    <message>
        <source>A purge flow of %1 reaches the least of %2.</source>
        <translation>Przepływ odpowietrzania %1 osiąga minimum %2.</translation>
    </message>
    <message>
        <source>A purge flow of %1 is at, or too near to tell from, the least of %2. Open the vent or the burner further and read again.</source>
        <translation>Przepływ odpowietrzania %1 jest równy minimum %2 albo zbyt blisko, aby rozstrzygnąć. Otworzyć szerzej odpowietrznik lub palnik i odczytać ponownie.</translation>
    </message>
    <message>
        <source>A purge flow of %1 is below the least of %2: gas and air may mix in the pipe instead of one pushing the other out. Purge again, faster.</source>
        <translation>Przepływ odpowietrzania %1 jest poniżej minimum %2: gaz i powietrze mogą się w rurze mieszać, zamiast żeby jedno wypychało drugie. Odpowietrzyć ponownie, szybciej.</translation>
    </message>
    <message>
        <source>At %2 the purge takes at least %1.</source>
        <translation>Przy %2 odpowietrzanie trwa co najmniej %1.</translation>
    </message>
    <message>
        <source>Gas at the vent is %1; the purge ends at %2.</source>
        <translation>Gazu przy odpowietrzniku jest %1; odpowietrzanie kończy się przy %2.</translation>
    </message>
    <message>
        <source>Gas at the vent is %1, at or too near to the %2 that ends the purge. Purge on and read again.</source>
        <translation>Gazu przy odpowietrzniku jest %1, równo lub zbyt blisko %2, które kończy odpowietrzanie. Odpowietrzać dalej i odczytać ponownie.</translation>
    </message>
    <message>
        <source>Gas at the vent is only %1; purge on until it reaches %2.</source>
        <translation>Gazu przy odpowietrzniku jest tylko %1; odpowietrzać dalej, aż osiągnie %2.</translation>
    </message>
    <message>
        <source>The meter&apos;s cyclic volume is not known. Read it off the meter&apos;s plate.</source>
        <translation>Objętość cykliczna gazomierza nie jest znana. Odczytać ją z tabliczki gazomierza.</translation>
    </message>
    <message>
        <source>The meter&apos;s cyclic volume is taken as %1; the figure on its plate stands before this.</source>
        <translation>Objętość cykliczną gazomierza przyjęto jako %1; wartość z tabliczki ma pierwszeństwo.</translation>
    </message>
    <message>
        <source>The least purge flow is not known: the largest pipe is not said, or lies outside the table.</source>
        <translation>Najmniejszy przepływ odpowietrzania nie jest znany: nie podano największej rury albo jest poza tabelą.</translation>
    </message>
    <message>
        <source>The Wobbe index, %1, lies within what a network may deliver: %2 to %3.</source>
        <translation>Liczba Wobbego, %1, mieści się w tym, co może dostarczać sieć: %2 do %3.</translation>
    </message>
    <message>
        <source>The Wobbe index, %1, is lower than a network may deliver (%2). Check the figure and its unit; if it stands, tell the gas transporter.</source>
        <translation>Liczba Wobbego, %1, jest niższa, niż może dostarczać sieć (%2). Sprawdzić wartość i jednostkę; jeśli się zgadza, powiadomić operatora sieci gazowej.</translation>
    </message>
    <message>
        <source>The Wobbe index, %1, is higher than a network may deliver (%2). Check the figure and its unit; if it stands, tell the gas transporter.</source>
        <translation>Liczba Wobbego, %1, jest wyższa, niż może dostarczać sieć (%2). Sprawdzić wartość i jednostkę; jeśli się zgadza, powiadomić operatora sieci gazowej.</translation>
    </message>
    <message>
        <source>The relative density, %1, is no more than a network may deliver: %2.</source>
        <translation>Gęstość względna, %1, nie przekracza tego, co może dostarczać sieć: %2.</translation>
    </message>
    <message>
        <source>The relative density, %1, is higher than a network may deliver (%2). Check the figure; if it stands, tell the gas transporter.</source>
        <translation>Gęstość względna, %1, jest wyższa, niż może dostarczać sieć (%2). Sprawdzić wartość; jeśli się zgadza, powiadomić operatora sieci gazowej.</translation>
    </message>
    <message>
        <source>The limits of network gas are for natural gas; this gas is %1.</source>
        <translation>Granice gazu sieciowego dotyczą gazu ziemnego; ten gaz to %1.</translation>
    </message>
    <message>
        <source>The calorific value, %1, is a usual one: networks are seen at %2 to %3.</source>
        <translation>Wartość kaloryczna, %1, jest zwykła: w sieciach spotyka się %2 do %3.</translation>
    </message>
    <message>
        <source>The calorific value, %1, is unusual: networks are seen at %2 to %3. Check figure and unit against the bill.</source>
        <translation>Wartość kaloryczna, %1, jest niezwykła: w sieciach spotyka się %2 do %3. Sprawdzić wartość i jednostkę z rachunkiem.</translation>
    </message>
    <message>
        <source>%1 is too near the limit of %2 to tell. Get the figure with more decimals.</source>
        <translation>%1 jest zbyt blisko granicy %2, aby rozstrzygnąć. Zdobyć wartość z większą liczbą miejsc po przecinku.</translation>
    </message>
    <message>
        <source>Let-by pressure</source>
        <translation>Ciśnienie próby przepuszczania zaworu</translation>
    </message>
    <message>
        <source>Let-by time</source>
        <translation>Czas próby przepuszczania zaworu</translation>
    </message>
    <message>
        <source>Test pressure where the full one can&apos;t be reached</source>
        <translation>Ciśnienie próbne, gdy pełnego nie da się osiągnąć</translation>
    </message>
    <message>
        <source>Settling time</source>
        <translation>Czas stabilizacji</translation>
    </message>
    <message>
        <source>Tightness test time</source>
        <translation>Czas badania szczelności</translation>
    </message>
    <message>
        <source>No perceptible movement, water gauge</source>
        <translation>Brak zauważalnej zmiany, manometr wodny</translation>
    </message>
    <message>
        <source>No perceptible movement, electronic gauge</source>
        <translation>Brak zauważalnej zmiany, manometr elektroniczny</translation>
    </message>
    <message>
        <source>Steady enough to start timing</source>
        <translation>Wystarczająco stabilne, aby zacząć pomiar czasu</translation>
    </message>
    <message>
        <source>Drop allowed, no meter in the part, pipe to 28 mm</source>
        <translation>Dopuszczalny spadek, bez gazomierza w tej części, rura do 28 mm</translation>
    </message>
    <message>
        <source>Drop allowed, ultrasonic meter to 6 m³/h, pipe to 28 mm</source>
        <translation>Dopuszczalny spadek, gazomierz ultradźwiękowy do 6 m³/h, rura do 28 mm</translation>
    </message>
    <message>
        <source>Drop allowed, diaphragm meter to 6 m³/h, pipe to 28 mm</source>
        <translation>Dopuszczalny spadek, gazomierz miechowy do 6 m³/h, rura do 28 mm</translation>
    </message>
    <message>
        <source>Drop allowed, diaphragm meter above 6 to 16 m³/h, pipe to 28 mm</source>
        <translation>Dopuszczalny spadek, gazomierz miechowy powyżej 6 do 16 m³/h, rura do 28 mm</translation>
    </message>
    <message>
        <source>Drop allowed, no meter in the part, pipe above 28 to 35 mm</source>
        <translation>Dopuszczalny spadek, bez gazomierza w tej części, rura powyżej 28 do 35 mm</translation>
    </message>
    <message>
        <source>Drop allowed, ultrasonic meter to 6 m³/h, pipe above 28 to 35 mm</source>
        <translation>Dopuszczalny spadek, gazomierz ultradźwiękowy do 6 m³/h, rura powyżej 28 do 35 mm</translation>
    </message>
    <message>
        <source>Drop allowed, diaphragm meter to 6 m³/h, pipe above 28 to 35 mm</source>
        <translation>Dopuszczalny spadek, gazomierz miechowy do 6 m³/h, rura powyżej 28 do 35 mm</translation>
    </message>
    <message>
        <source>Drop allowed, diaphragm meter above 6 to 16 m³/h, pipe above 28 to 35 mm</source>
        <translation>Dopuszczalny spadek, gazomierz miechowy powyżej 6 do 16 m³/h, rura powyżej 28 do 35 mm</translation>
    </message>
    <message>
        <source>Drop allowed by installation volume</source>
        <translation>Dopuszczalny spadek według objętości instalacji</translation>
    </message>
    <message>
        <source>Fall for which the volume need not be worked out</source>
        <translation>Spadek, przy którym objętości nie trzeba obliczać</translation>
    </message>
    <message>
        <source>Scope, installation volume</source>
        <translation>Zakres, objętość instalacji</translation>
    </message>
    <message>
        <source>Scope, pipe size</source>
        <translation>Zakres, średnica rury</translation>
    </message>
    <message>
        <source>Scope, meter&apos;s badged capacity</source>
        <translation>Zakres, przepustowość gazomierza z tabliczki</translation>
    </message>
    <message>
        <source>Scope, operating pressure</source>
        <translation>Zakres, ciśnienie pracy</translation>
    </message>
    <message>
        <source>Scope, supply pressure at the emergency control valve</source>
        <translation>Zakres, ciśnienie zasilania przy awaryjnym zaworze odcinającym</translation>
    </message>
    <message>
        <source>Purge volume, meter to 6 m³/h and pipe to 28 mm</source>
        <translation>Objętość odpowietrzania, gazomierz do 6 m³/h i rura do 28 mm</translation>
    </message>
    <message>
        <source>Purge volume, times the installation volume</source>
        <translation>Objętość odpowietrzania, krotność objętości instalacji</translation>
    </message>
    <message>
        <source>Volume that may be purged without an open burner</source>
        <translation>Objętość, którą można odpowietrzyć bez otwartego palnika</translation>
    </message>
    <message>
        <source>Share of the pipes&apos; volume added for fittings</source>
        <translation>Udział objętości rur dodawany na kształtki</translation>
    </message>
    <message>
        <source>Standing pressure (regulator lock-up)</source>
        <translation>Ciśnienie statyczne (zamknięcie reduktora)</translation>
    </message>
    <message>
        <source>Temperature change assumed during the test</source>
        <translation>Zmiana temperatury przyjęta podczas badania</translation>
    </message>
    <message>
        <source>Calorific value (gross) where the bill gives none</source>
        <translation>Wartość kaloryczna (brutto), gdy rachunek jej nie podaje</translation>
    </message>
    <message>
        <source>Network gas, lowest Wobbe index (gross)</source>
        <translation>Gaz sieciowy, najniższa liczba Wobbego (brutto)</translation>
    </message>
    <message>
        <source>Network gas, highest Wobbe index (gross)</source>
        <translation>Gaz sieciowy, najwyższa liczba Wobbego (brutto)</translation>
    </message>
    <message>
        <source>Network gas, highest relative density</source>
        <translation>Gaz sieciowy, największa gęstość względna</translation>
    </message>
    <message>
        <source>Network gas, calorific values (gross) that are seen</source>
        <translation>Gaz sieciowy, spotykane wartości kaloryczne (brutto)</translation>
    </message>
    <message>
        <source>Pressure drop from meter to appliance</source>
        <translation>Spadek ciśnienia od gazomierza do urządzenia</translation>
    </message>
    <message>
        <source>Pipe efficiency, share of the smooth-pipe law&apos;s flow</source>
        <translation>Sprawność rury, udział przepływu według wzoru dla gładkiej rury</translation>
    </message>
    <message>
        <source>Equivalent length before 2015, copper to 28 mm, elbow</source>
        <translation>Długość zastępcza przed 2015, miedź do 28 mm, kolano</translation>
    </message>
    <message>
        <source>Equivalent length before 2015, copper to 28 mm, bend</source>
        <translation>Długość zastępcza przed 2015, miedź do 28 mm, łuk</translation>
    </message>
    <message>
        <source>Equivalent length before 2015, copper to 28 mm, 45° bend</source>
        <translation>Długość zastępcza przed 2015, miedź do 28 mm, łuk 45°</translation>
    </message>
    <message>
        <source>Equivalent length before 2015, copper to 28 mm, tee</source>
        <translation>Długość zastępcza przed 2015, miedź do 28 mm, trójnik</translation>
    </message>
    <message>
        <source>Equivalent length from 2015, 15 mm copper, elbow</source>
        <translation>Długość zastępcza od 2015, miedź 15 mm, kolano</translation>
    </message>
    <message>
        <source>Equivalent length from 2015, 15 mm copper, bend</source>
        <translation>Długość zastępcza od 2015, miedź 15 mm, łuk</translation>
    </message>
    <message>
        <source>Equivalent length from 2015, 15 mm copper, 45° bend</source>
        <translation>Długość zastępcza od 2015, miedź 15 mm, łuk 45°</translation>
    </message>
    <message>
        <source>Equivalent length from 2015, 15 mm copper, tee</source>
        <translation>Długość zastępcza od 2015, miedź 15 mm, trójnik</translation>
    </message>
    <message>
        <source>Equivalent length from 2015, 22 mm copper, elbow</source>
        <translation>Długość zastępcza od 2015, miedź 22 mm, kolano</translation>
    </message>
    <message>
        <source>Equivalent length from 2015, 22 mm copper, bend</source>
        <translation>Długość zastępcza od 2015, miedź 22 mm, łuk</translation>
    </message>
    <message>
        <source>Equivalent length from 2015, 22 mm copper, 45° bend</source>
        <translation>Długość zastępcza od 2015, miedź 22 mm, łuk 45°</translation>
    </message>
    <message>
        <source>Equivalent length from 2015, 22 mm copper, tee</source>
        <translation>Długość zastępcza od 2015, miedź 22 mm, trójnik</translation>
    </message>
    <message>
        <source>Equivalent length from 2015, 28 mm copper, elbow</source>
        <translation>Długość zastępcza od 2015, miedź 28 mm, kolano</translation>
    </message>
    <message>
        <source>Equivalent length from 2015, 28 mm copper, bend</source>
        <translation>Długość zastępcza od 2015, miedź 28 mm, łuk</translation>
    </message>
    <message>
        <source>Equivalent length from 2015, 28 mm copper, 45° bend</source>
        <translation>Długość zastępcza od 2015, miedź 28 mm, łuk 45°</translation>
    </message>
    <message>
        <source>Equivalent length from 2015, 28 mm copper, tee</source>
        <translation>Długość zastępcza od 2015, miedź 28 mm, trójnik</translation>
    </message>
    <message>
        <source>Equivalent length from 2015, 35 mm copper, elbow</source>
        <translation>Długość zastępcza od 2015, miedź 35 mm, kolano</translation>
    </message>
    <message>
        <source>Equivalent length from 2015, 35 mm copper, bend</source>
        <translation>Długość zastępcza od 2015, miedź 35 mm, łuk</translation>
    </message>
    <message>
        <source>Equivalent length from 2015, 35 mm copper, 45° bend</source>
        <translation>Długość zastępcza od 2015, miedź 35 mm, łuk 45°</translation>
    </message>
    <message>
        <source>Equivalent length from 2015, 35 mm copper, tee</source>
        <translation>Długość zastępcza od 2015, miedź 35 mm, trójnik</translation>
    </message>
    <message>
        <source>Purge volume, larger installation, times pipe and fittings</source>
        <translation>Objętość odpowietrzania, większa instalacja, krotność rur i kształtek</translation>
    </message>
    <message>
        <source>Purge volume, larger installation, times the meter&apos;s cyclic volume</source>
        <translation>Objętość odpowietrzania, większa instalacja, krotność objętości cyklicznej gazomierza</translation>
    </message>
    <message>
        <source>Least purge speed to DN 150, in metres a second</source>
        <translation>Najmniejsza prędkość odpowietrzania do DN 150, w metrach na sekundę</translation>
    </message>
    <message>
        <source>Least purge speed from DN 200, in metres a second</source>
        <translation>Najmniejsza prędkość odpowietrzania od DN 200, w metrach na sekundę</translation>
    </message>
    <message>
        <source>Least purge flow, DN 20</source>
        <translation>Najmniejszy przepływ odpowietrzania, DN 20</translation>
    </message>
    <message>
        <source>Least purge flow, DN 25</source>
        <translation>Najmniejszy przepływ odpowietrzania, DN 25</translation>
    </message>
    <message>
        <source>Least purge flow, DN 32</source>
        <translation>Najmniejszy przepływ odpowietrzania, DN 32</translation>
    </message>
    <message>
        <source>Least purge flow, DN 40</source>
        <translation>Najmniejszy przepływ odpowietrzania, DN 40</translation>
    </message>
    <message>
        <source>Least purge flow, DN 50</source>
        <translation>Najmniejszy przepływ odpowietrzania, DN 50</translation>
    </message>
    <message>
        <source>Least purge flow, DN 65</source>
        <translation>Najmniejszy przepływ odpowietrzania, DN 65</translation>
    </message>
    <message>
        <source>Least purge flow, DN 80</source>
        <translation>Najmniejszy przepływ odpowietrzania, DN 80</translation>
    </message>
    <message>
        <source>Least purge flow, DN 100</source>
        <translation>Najmniejszy przepływ odpowietrzania, DN 100</translation>
    </message>
    <message>
        <source>Least purge flow, DN 125</source>
        <translation>Najmniejszy przepływ odpowietrzania, DN 125</translation>
    </message>
    <message>
        <source>Least purge flow, DN 150</source>
        <translation>Najmniejszy przepływ odpowietrzania, DN 150</translation>
    </message>
    <message>
        <source>Cyclic volume, U6 / G4 meter</source>
        <translation>Objętość cykliczna, gazomierz U6 / G4</translation>
    </message>
    <message>
        <source>Cyclic volume, U16 / G10 meter</source>
        <translation>Objętość cykliczna, gazomierz U16 / G10</translation>
    </message>
    <message>
        <source>Cyclic volume, U25 / G16 meter</source>
        <translation>Objętość cykliczna, gazomierz U25 / G16</translation>
    </message>
    <message>
        <source>Cyclic volume, U40 / G25 meter</source>
        <translation>Objętość cykliczna, gazomierz U40 / G25</translation>
    </message>
    <message>
        <source>Cyclic volume, U65 / G40 meter</source>
        <translation>Objętość cykliczna, gazomierz U65 / G40</translation>
    </message>
    <message>
        <source>Cyclic volume, U100 / G65 meter</source>
        <translation>Objętość cykliczna, gazomierz U100 / G65</translation>
    </message>
    <message>
        <source>Cyclic volume, U160 / G100 meter</source>
        <translation>Objętość cykliczna, gazomierz U160 / G100</translation>
    </message>
    <message>
        <source>Share of gas that ends a purge</source>
        <translation>Udział gazu, który kończy odpowietrzanie</translation>
    </message>
    <message>
        <source>Scope of IGE/UP/1A, installation volume</source>
        <translation>Zakres IGE/UP/1A, objętość instalacji</translation>
    </message>
    <message>
        <source>Scope of IGE/UP/1A, pipe size</source>
        <translation>Zakres IGE/UP/1A, średnica rury</translation>
    </message>
    <message>
        <source>Scope of IGE/UP/1A, operating pressure</source>
        <translation>Zakres IGE/UP/1A, ciśnienie pracy</translation>
    </message>
    <message>
        <source>Scope of IGE/UP/1, maximum operating pressure</source>
        <translation>Zakres IGE/UP/1, największe ciśnienie pracy</translation>
    </message>
    <message>
        <source>Readable movement, water gauge to 120 mbar</source>
        <translation>Odczytywalna zmiana, manometr wodny do 120 mbar</translation>
    </message>
    <message>
        <source>Readable movement, gauge with dense fluid (1.99) to 200 mbar</source>
        <translation>Odczytywalna zmiana, manometr z ciężką cieczą (1.99) do 200 mbar</translation>
    </message>
    <message>
        <source>Readable movement, mercury gauge to 1000 mbar</source>
        <translation>Odczytywalna zmiana, manometr rtęciowy do 1000 mbar</translation>
    </message>
    <message>
        <source>Readable movement, electronic gauge with one decimal to 200 mbar</source>
        <translation>Odczytywalna zmiana, manometr elektroniczny z jednym miejscem po przecinku do 200 mbar</translation>
    </message>
    <message>
        <source>Readable movement, electronic gauge with two decimals to 200 mbar</source>
        <translation>Odczytywalna zmiana, manometr elektroniczny z dwoma miejscami po przecinku do 200 mbar</translation>
    </message>
    <message>
        <source>Readable movement, electronic gauge with one decimal above 200 to 2000 mbar</source>
        <translation>Odczytywalna zmiana, manometr elektroniczny z jednym miejscem po przecinku powyżej 200 do 2000 mbar</translation>
    </message>
    <message>
        <source>Readable movement, electronic gauge without decimals to 20 bar</source>
        <translation>Odczytywalna zmiana, manometr elektroniczny bez miejsc po przecinku do 20 bar</translation>
    </message>
    <message>
        <source>Longest tightness test, water gauge to 120 mbar</source>
        <translation>Najdłuższe badanie szczelności, manometr wodny do 120 mbar</translation>
    </message>
    <message>
        <source>Longest tightness test, gauge with dense fluid (1.99) to 200 mbar</source>
        <translation>Najdłuższe badanie szczelności, manometr z ciężką cieczą (1.99) do 200 mbar</translation>
    </message>
    <message>
        <source>Longest tightness test, mercury gauge to 1000 mbar</source>
        <translation>Najdłuższe badanie szczelności, manometr rtęciowy do 1000 mbar</translation>
    </message>
    <message>
        <source>Longest tightness test, electronic gauge with one decimal to 200 mbar</source>
        <translation>Najdłuższe badanie szczelności, manometr elektroniczny z jednym miejscem po przecinku do 200 mbar</translation>
    </message>
    <message>
        <source>Longest tightness test, electronic gauge with two decimals to 200 mbar</source>
        <translation>Najdłuższe badanie szczelności, manometr elektroniczny z dwoma miejscami po przecinku do 200 mbar</translation>
    </message>
    <message>
        <source>Longest tightness test, electronic gauge with one decimal above 200 to 2000 mbar</source>
        <translation>Najdłuższe badanie szczelności, manometr elektroniczny z jednym miejscem po przecinku powyżej 200 do 2000 mbar</translation>
    </message>
    <message>
        <source>Longest tightness test, electronic gauge without decimals to 20 bar</source>
        <translation>Najdłuższe badanie szczelności, manometr elektroniczny bez miejsc po przecinku do 20 bar</translation>
    </message>
    <message>
        <source>Least time of a tightness test, larger installation</source>
        <translation>Najkrótszy czas badania szczelności, większa instalacja</translation>
    </message>
    <message>
        <source>Time factor F1, tested with the fuel gas</source>
        <translation>Współczynnik czasu F1, badano gazem palnym</translation>
    </message>
    <message>
        <source>Time factor F1, tested with air or nitrogen</source>
        <translation>Współczynnik czasu F1, badano powietrzem lub azotem</translation>
    </message>
    <message>
        <source>Time multiplier for a ventilated room (type B), divided by the room&apos;s m³</source>
        <translation>Mnożnik czasu dla pomieszczenia wentylowanego (typ B), dzielony przez m³ pomieszczenia</translation>
    </message>
    <message>
        <source>Time multiplier for a large ventilated room (type C)</source>
        <translation>Mnożnik czasu dla dużego pomieszczenia wentylowanego (typ C)</translation>
    </message>
    <message>
        <source>Leak factor F3, tested with the fuel gas</source>
        <translation>Współczynnik wycieku F3, badano gazem palnym</translation>
    </message>
    <message>
        <source>Leak factor F3, tested with air or nitrogen</source>
        <translation>Współczynnik wycieku F3, badano powietrzem lub azotem</translation>
    </message>
    <message>
        <source>Leak permitted, new pipework of a larger installation</source>
        <translation>Dopuszczalny wyciek, nowe rury większej instalacji</translation>
    </message>
    <message>
        <source>Leak permitted, existing, small or poorly ventilated room (type A)</source>
        <translation>Dopuszczalny wyciek, istniejące, małe lub słabo wentylowane pomieszczenie (typ A)</translation>
    </message>
    <message>
        <source>Leak permitted, existing, ventilated room (type B), m³/h for each m³ of room</source>
        <translation>Dopuszczalny wyciek, istniejące, pomieszczenie wentylowane (typ B), m³/h na każdy m³ pomieszczenia</translation>
    </message>
    <message>
        <source>Leak permitted, existing, large ventilated room (type C)</source>
        <translation>Dopuszczalny wyciek, istniejące, duże pomieszczenie wentylowane (typ C)</translation>
    </message>
    <message>
        <source>Least volume of a room that counts as type C</source>
        <translation>Najmniejsza objętość pomieszczenia liczonego jako typ C</translation>
    </message>
    <message>
        <source>Leak permitted, existing, in the open</source>
        <translation>Dopuszczalny wyciek, istniejące, na wolnym powietrzu</translation>
    </message>
    <message>
        <source>Leak permitted, existing, buried</source>
        <translation>Dopuszczalny wyciek, istniejące, zakopane</translation>
    </message>
    <message>
        <source>Let-by pressure of a larger installation, share of the operating pressure</source>
        <translation>Ciśnienie próby przepuszczania zaworu większej instalacji, udział ciśnienia pracy</translation>
    </message>
    <message>
        <source>Let-by time, larger installation</source>
        <translation>Czas próby przepuszczania zaworu, większa instalacja</translation>
    </message>
    <message>
        <source>Settling time, larger installation</source>
        <translation>Czas stabilizacji, większa instalacja</translation>
    </message>
    <message>
        <source>Test pressure of a larger installation, share of the operating pressure</source>
        <translation>Ciśnienie próbne większej instalacji, udział ciśnienia pracy</translation>
    </message>
    <message>
        <source>Strength test, times the maximum incidental pressure</source>
        <translation>Badanie wytrzymałości, krotność największego ciśnienia przypadkowego</translation>
    </message>
    <message>
        <source>Strength test, operating pressure to which the low band goes</source>
        <translation>Badanie wytrzymałości, ciśnienie pracy, do którego sięga niski przedział</translation>
    </message>
    <message>
        <source>Strength test, operating pressure to which the middle band goes</source>
        <translation>Badanie wytrzymałości, ciśnienie pracy, do którego sięga średni przedział</translation>
    </message>
    <message>
        <source>Strength test, times the maximum operating pressure, low band</source>
        <translation>Badanie wytrzymałości, krotność największego ciśnienia pracy, niski przedział</translation>
    </message>
    <message>
        <source>Strength test, times the maximum operating pressure, middle band</source>
        <translation>Badanie wytrzymałości, krotność największego ciśnienia pracy, średni przedział</translation>
    </message>
    <message>
        <source>Strength test, times the maximum operating pressure, high band</source>
        <translation>Badanie wytrzymałości, krotność największego ciśnienia pracy, wysoki przedział</translation>
    </message>
    <message>
        <source>Strength test, settling time, low band</source>
        <translation>Badanie wytrzymałości, czas stabilizacji, niski przedział</translation>
    </message>
    <message>
        <source>Strength test, settling time, middle band</source>
        <translation>Badanie wytrzymałości, czas stabilizacji, średni przedział</translation>
    </message>
    <message>
        <source>Strength test, settling time, high band</source>
        <translation>Badanie wytrzymałości, czas stabilizacji, wysoki przedział</translation>
    </message>
    <message>
        <source>Strength test, time held, low band</source>
        <translation>Badanie wytrzymałości, czas utrzymania, niski przedział</translation>
    </message>
    <message>
        <source>Strength test, time held, middle band</source>
        <translation>Badanie wytrzymałości, czas utrzymania, średni przedział</translation>
    </message>
    <message>
        <source>Strength test, time held, high band</source>
        <translation>Badanie wytrzymałości, czas utrzymania, wysoki przedział</translation>
    </message>
    <message>
        <source>Strength test, share of the pressure that it may fall by, low band</source>
        <translation>Badanie wytrzymałości, udział ciśnienia, o który może spaść, niski przedział</translation>
    </message>
    <message>
        <source>Strength test, share of the pressure that it may fall by, middle band</source>
        <translation>Badanie wytrzymałości, udział ciśnienia, o który może spaść, średni przedział</translation>
    </message>
    <message>
        <source>Strength test, share of the pressure that it may fall by, high band</source>
        <translation>Badanie wytrzymałości, udział ciśnienia, o który może spaść, wysoki przedział</translation>
    </message>
    <message>
        <source>Meter accuracy</source>
        <translation>Dokładność gazomierza</translation>
    </message>
    <message>
        <source>Slip of the hand at a stopwatch</source>
        <translation>Opóźnienie ręki przy stoperze</translation>
    </message>
    <message>
        <source>Metered volume to standard conditions, fixed factor</source>
        <translation>Zmierzona objętość na warunki normalne, stały współczynnik</translation>
    </message>
    <message>
        <source>Heat input above the plate</source>
        <translation>Obciążenie cieplne powyżej tabliczki</translation>
    </message>
    <message>
        <source>Heat input below the plate</source>
        <translation>Obciążenie cieplne poniżej tabliczki</translation>
    </message>
    <message>
        <source>Time for the average at the meter</source>
        <translation>Czas dla średniej przy gazomierzu</translation>
    </message>
    <message>
        <source>Hot water flow</source>
        <translation>Przepływ ciepłej wody</translation>
    </message>
    <message>
        <source>Hot water output over net heat input</source>
        <translation>Moc ciepłej wody do obciążenia cieplnego netto</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio, condensing boiler</source>
        <translation>Stosunek CO/CO₂, kocioł kondensacyjny</translation>
    </message>
    <message>
        <source>CO in the flue gas, condensing boiler</source>
        <translation>CO w spalinach, kocioł kondensacyjny</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio, non-condensing boiler</source>
        <translation>Stosunek CO/CO₂, kocioł niekondensacyjny</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio, warm-air heater or circulator</source>
        <translation>Stosunek CO/CO₂, nagrzewnica powietrza lub cyrkulator</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio, back boiler</source>
        <translation>Stosunek CO/CO₂, kocioł wbudowany za kominkiem</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio, fire of a back boiler unit</source>
        <translation>Stosunek CO/CO₂, kominek zespołu z kotłem wbudowanym</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio, gas fire or open-flued space heater</source>
        <translation>Stosunek CO/CO₂, kominek gazowy lub ogrzewacz z otwartą komorą spalania</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio, open-flued water heater</source>
        <translation>Stosunek CO/CO₂, podgrzewacz wody z otwartą komorą spalania</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio, room-sealed water heater</source>
        <translation>Stosunek CO/CO₂, podgrzewacz wody z zamkniętą komorą spalania</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio, flueless space heater</source>
        <translation>Stosunek CO/CO₂, ogrzewacz bez odprowadzenia spalin</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio, flueless water heater</source>
        <translation>Stosunek CO/CO₂, podgrzewacz wody bez odprowadzenia spalin</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio, oven</source>
        <translation>Stosunek CO/CO₂, piekarnik</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio, grill</source>
        <translation>Stosunek CO/CO₂, grill</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio, flued range cooker</source>
        <translation>Stosunek CO/CO₂, kuchnia z odprowadzeniem spalin</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio, tumble dryer</source>
        <translation>Stosunek CO/CO₂, suszarka bębnowa</translation>
    </message>
    <message>
        <source>CO/CO₂ ratio</source>
        <translation>Stosunek CO/CO₂</translation>
    </message>
    <message>
        <source>CO in the flue gas</source>
        <translation>CO w spalinach</translation>
    </message>
    <message>
        <source>CO₂ in the flue gas</source>
        <translation>CO₂ w spalinach</translation>
    </message>
    <message>
        <source>O₂ and CO₂ off the fuel&apos;s line</source>
        <translation>O₂ i CO₂ poza linią paliwa</translation>
    </message>
    <message>
        <source>Heat input that air leaking into a room serves</source>
        <translation>Obciążenie cieplne, dla którego wystarcza powietrze napływające nieszczelnościami</translation>
    </message>
    <message>
        <source>Vent for open-flued appliances, cm² for each further kW</source>
        <translation>Otwór dla urządzeń z otwartą komorą spalania, cm² na każdy dalszy kW</translation>
    </message>
    <message>
        <source>Scope of the domestic ventilation standard, heat input in one space</source>
        <translation>Zakres domowej normy wentylacji, obciążenie cieplne w jednej przestrzeni</translation>
    </message>
    <message>
        <source>Vents through an inside wall, times the area</source>
        <translation>Otwory przez ścianę wewnętrzną, krotność przekroju</translation>
    </message>
    <message>
        <source>Vent for open-flued appliances in a tight dwelling, cm² for each kW</source>
        <translation>Otwór dla urządzeń z otwartą komorą spalania w szczelnym mieszkaniu, cm² na każdy kW</translation>
    </message>
    <message>
        <source>Several appliances in a room, how many groups&apos; needs are added</source>
        <translation>Kilka urządzeń w pomieszczeniu, ilu grup potrzeby się dodaje</translation>
    </message>
    <message>
        <source>Vent for a decorative fuel effect fire</source>
        <translation>Otwór dla kominka gazowego dekoracyjnego</translation>
    </message>
    <message>
        <source>Decorative fuel effect fire, heat input</source>
        <translation>Kominek gazowy dekoracyjny, obciążenie cieplne</translation>
    </message>
    <message>
        <source>Radiant or inset fire without a vent, heat input</source>
        <translation>Kominek promiennikowy lub wkładowy bez otworu, obciążenie cieplne</translation>
    </message>
    <message>
        <source>Vent that the appliance&apos;s maker asks for</source>
        <translation>Otwór wymagany przez producenta urządzenia</translation>
    </message>
    <message>
        <source>Compartment, open-flued, high vent to a room, cm² for each kW</source>
        <translation>Komora, otwarta komora spalania, górny otwór do pomieszczenia, cm² na każdy kW</translation>
    </message>
    <message>
        <source>Compartment, open-flued, low vent to a room, cm² for each kW</source>
        <translation>Komora, otwarta komora spalania, dolny otwór do pomieszczenia, cm² na każdy kW</translation>
    </message>
    <message>
        <source>Compartment, open-flued, high vent to outside, cm² for each kW</source>
        <translation>Komora, otwarta komora spalania, górny otwór na zewnątrz, cm² na każdy kW</translation>
    </message>
    <message>
        <source>Compartment, open-flued, low vent to outside, cm² for each kW</source>
        <translation>Komora, otwarta komora spalania, dolny otwór na zewnątrz, cm² na każdy kW</translation>
    </message>
    <message>
        <source>Compartment, room-sealed, high vent to a room, cm² for each kW</source>
        <translation>Komora, zamknięta komora spalania, górny otwór do pomieszczenia, cm² na każdy kW</translation>
    </message>
    <message>
        <source>Compartment, room-sealed, low vent to a room, cm² for each kW</source>
        <translation>Komora, zamknięta komora spalania, dolny otwór do pomieszczenia, cm² na każdy kW</translation>
    </message>
    <message>
        <source>Compartment, room-sealed, high vent to outside, cm² for each kW</source>
        <translation>Komora, zamknięta komora spalania, górny otwór na zewnątrz, cm² na każdy kW</translation>
    </message>
    <message>
        <source>Compartment, room-sealed, low vent to outside, cm² for each kW</source>
        <translation>Komora, zamknięta komora spalania, dolny otwór na zewnątrz, cm² na każdy kW</translation>
    </message>
    <message>
        <source>Cooker, room below which the larger vent is needed</source>
        <translation>Kuchenka, pomieszczenie, poniżej którego potrzebny jest większy otwór</translation>
    </message>
    <message>
        <source>Cooker, room up to which the smaller vent is needed</source>
        <translation>Kuchenka, pomieszczenie, do którego potrzebny jest mniejszy otwór</translation>
    </message>
    <message>
        <source>Cooker, vent in the smallest rooms</source>
        <translation>Kuchenka, otwór w najmniejszych pomieszczeniach</translation>
    </message>
    <message>
        <source>Cooker, vent in small rooms</source>
        <translation>Kuchenka, otwór w małych pomieszczeniach</translation>
    </message>
    <message>
        <source>Cooker in a bed-sitting room, room volume</source>
        <translation>Kuchenka w pokoju dziennym z sypialnią, objętość pomieszczenia</translation>
    </message>
    <message>
        <source>Cooker in a basement, vent advised</source>
        <translation>Kuchenka w piwnicy, zalecany otwór</translation>
    </message>
    <message>
        <source>Flueless water heater, heat input</source>
        <translation>Podgrzewacz wody bez odprowadzenia spalin, obciążenie cieplne</translation>
    </message>
    <message>
        <source>Flueless water heater, room volume</source>
        <translation>Podgrzewacz wody bez odprowadzenia spalin, objętość pomieszczenia</translation>
    </message>
    <message>
        <source>Flueless water heater, room up to which the larger vent is needed</source>
        <translation>Podgrzewacz wody bez odprowadzenia spalin, pomieszczenie, do którego potrzebny jest większy otwór</translation>
    </message>
    <message>
        <source>Flueless water heater, room up to which the smaller vent is needed</source>
        <translation>Podgrzewacz wody bez odprowadzenia spalin, pomieszczenie, do którego potrzebny jest mniejszy otwór</translation>
    </message>
    <message>
        <source>Flueless water heater, vent in small rooms</source>
        <translation>Podgrzewacz wody bez odprowadzenia spalin, otwór w małych pomieszczeniach</translation>
    </message>
    <message>
        <source>Flueless water heater, vent in medium rooms</source>
        <translation>Podgrzewacz wody bez odprowadzenia spalin, otwór w średnich pomieszczeniach</translation>
    </message>
    <message>
        <source>Flueless space heater in a room, W for each m³</source>
        <translation>Ogrzewacz bez odprowadzenia spalin w pomieszczeniu, W na każdy m³</translation>
    </message>
    <message>
        <source>Flueless space heater in an internal space, W for each m³</source>
        <translation>Ogrzewacz bez odprowadzenia spalin w przestrzeni wewnętrznej, W na każdy m³</translation>
    </message>
    <message>
        <source>Flueless space heater, vent to begin with</source>
        <translation>Ogrzewacz bez odprowadzenia spalin, otwór początkowy</translation>
    </message>
    <message>
        <source>Flueless space heater in a room, heat input that the first vent serves</source>
        <translation>Ogrzewacz bez odprowadzenia spalin w pomieszczeniu, obciążenie cieplne, na które wystarcza pierwszy otwór</translation>
    </message>
    <message>
        <source>Flueless space heater in a room, cm² for each further kW</source>
        <translation>Ogrzewacz bez odprowadzenia spalin w pomieszczeniu, cm² na każdy dalszy kW</translation>
    </message>
    <message>
        <source>Flueless space heater in an internal space, heat input that the first vent serves</source>
        <translation>Ogrzewacz bez odprowadzenia spalin w przestrzeni wewnętrznej, obciążenie cieplne, na które wystarcza pierwszy otwór</translation>
    </message>
    <message>
        <source>Flueless space heater in an internal space, cm² for each further kW</source>
        <translation>Ogrzewacz bez odprowadzenia spalin w przestrzeni wewnętrznej, cm² na każdy dalszy kW</translation>
    </message>
    <message>
        <source>LPG cabinet heater in a room, W for each m³</source>
        <translation>Ogrzewacz szafkowy LPG w pomieszczeniu, W na każdy m³</translation>
    </message>
    <message>
        <source>LPG cabinet heater in an internal space, W for each m³</source>
        <translation>Ogrzewacz szafkowy LPG w przestrzeni wewnętrznej, W na każdy m³</translation>
    </message>
    <message>
        <source>LPG cabinet heater, room volume</source>
        <translation>Ogrzewacz szafkowy LPG, objętość pomieszczenia</translation>
    </message>
    <message>
        <source>LPG cabinet heater, cm² for each kW at high and at low level</source>
        <translation>Ogrzewacz szafkowy LPG, cm² na każdy kW u góry i u dołu</translation>
    </message>
    <message>
        <source>LPG cabinet heater, least vent at high and at low level</source>
        <translation>Ogrzewacz szafkowy LPG, najmniejszy otwór u góry i u dołu</translation>
    </message>
    <message>
        <source>Flueless tumble dryer, vent</source>
        <translation>Suszarka bez odprowadzenia spalin, otwór</translation>
    </message>
    <message>
        <source>Scope of the boiler room standard, heat input</source>
        <translation>Zakres normy dla kotłowni, obciążenie cieplne</translation>
    </message>
    <message>
        <source>Boiler room, low vent to outside, cm² for each kW</source>
        <translation>Kotłownia, dolny otwór na zewnątrz, cm² na każdy kW</translation>
    </message>
    <message>
        <source>Boiler room, high vent to outside, cm² for each kW</source>
        <translation>Kotłownia, górny otwór na zewnątrz, cm² na każdy kW</translation>
    </message>
    <message>
        <source>Boiler enclosure, low vent, used up to half of the summer, cm² for each kW</source>
        <translation>Obudowa kotła, dolny otwór, używana do połowy lata, cm² na każdy kW</translation>
    </message>
    <message>
        <source>Boiler enclosure, high vent, used up to half of the summer, cm² for each kW</source>
        <translation>Obudowa kotła, górny otwór, używana do połowy lata, cm² na każdy kW</translation>
    </message>
    <message>
        <source>Boiler enclosure, low vent, used half to three quarters of the summer, cm² for each kW</source>
        <translation>Obudowa kotła, dolny otwór, używana od połowy do trzech czwartych lata, cm² na każdy kW</translation>
    </message>
    <message>
        <source>Boiler enclosure, high vent, used half to three quarters of the summer, cm² for each kW</source>
        <translation>Obudowa kotła, górny otwór, używana od połowy do trzech czwartych lata, cm² na każdy kW</translation>
    </message>
    <message>
        <source>Boiler enclosure, low vent, used most of the summer, cm² for each kW</source>
        <translation>Obudowa kotła, dolny otwór, używana przez większość lata, cm² na każdy kW</translation>
    </message>
    <message>
        <source>Boiler enclosure, high vent, used most of the summer, cm² for each kW</source>
        <translation>Obudowa kotła, górny otwór, używana przez większość lata, cm² na każdy kW</translation>
    </message>
    <message>
        <source>Boiler room used half to three quarters of the summer, cm² added for each kW</source>
        <translation>Kotłownia używana od połowy do trzech czwartych lata, cm² dodawane na każdy kW</translation>
    </message>
    <message>
        <source>Boiler room used most of the summer, cm² added for each kW</source>
        <translation>Kotłownia używana przez większość lata, cm² dodawane na każdy kW</translation>
    </message>
    <message>
        <source>Boiler room temperature, 100 mm above the floor</source>
        <translation>Temperatura kotłowni, 100 mm nad podłogą</translation>
    </message>
    <message>
        <source>Boiler room temperature, at 1.5 m</source>
        <translation>Temperatura kotłowni, na 1.5 m</translation>
    </message>
    <message>
        <source>Boiler room temperature, 100 mm below the ceiling</source>
        <translation>Temperatura kotłowni, 100 mm pod sufitem</translation>
    </message>
    <message>
        <source>Carbon monoxide at work, mean of 15 minutes</source>
        <translation>Tlenek węgla w pracy, średnia z 15 minut</translation>
    </message>
    <message>
        <source>Carbon monoxide at work, mean of 8 hours</source>
        <translation>Tlenek węgla w pracy, średnia z 8 godzin</translation>
    </message>
    <message>
        <source>Carbon monoxide, any reading that warns everyone to leave</source>
        <translation>Tlenek węgla, każdy odczyt ostrzegający, by wszyscy wyszli</translation>
    </message>
    <message>
        <source>Carbon monoxide, any reading that warns to find the source</source>
        <translation>Tlenek węgla, każdy odczyt ostrzegający, by znaleźć źródło</translation>
    </message>
    <message>
        <source>Room carbon monoxide that needs no action</source>
        <translation>Tlenek węgla w pomieszczeniu niewymagający działania</translation>
    </message>
    <message>
        <source>Room carbon monoxide at which everyone leaves</source>
        <translation>Tlenek węgla w pomieszczeniu, przy którym wszyscy wychodzą</translation>
    </message>
    <message>
        <source>Room carbon monoxide, short peak of a cooker</source>
        <translation>Tlenek węgla w pomieszczeniu, krótki szczyt przy kuchence</translation>
    </message>
    <message>
        <source>Room carbon monoxide, height of sampling</source>
        <translation>Tlenek węgla w pomieszczeniu, wysokość pobierania próbek</translation>
    </message>
    <message>
        <source>Room carbon monoxide, distance from the appliance</source>
        <translation>Tlenek węgla w pomieszczeniu, odległość od urządzenia</translation>
    </message>
    <message>
        <source>Room carbon monoxide test with flued appliances, time</source>
        <translation>Badanie tlenku węgla w pomieszczeniu z urządzeniami z odprowadzeniem spalin, czas</translation>
    </message>
    <message>
        <source>Room carbon monoxide test with flueless appliances, time</source>
        <translation>Badanie tlenku węgla w pomieszczeniu z urządzeniami bez odprowadzenia spalin, czas</translation>
    </message>
    <message>
        <source>Carbon monoxide in the blood that guidelines mean to stay below</source>
        <translation>Tlenek węgla we krwi, poniżej którego mają pozostać wytyczne</translation>
    </message>
    <message>
        <source>Photographs</source>
        <translation>Fotografie</translation>
    </message>
    <message>
        <source>Tested and signed by (name typed)</source>
        <translation>Zbadał i podpisał (nazwisko wpisane)</translation>
    </message>
    <message>
        <source>Tested and signed by</source>
        <translation>Zbadał i podpisał</translation>
    </message>
    <message>
        <source>Checked and signed by (name typed)</source>
        <translation>Skontrolował i podpisał (nazwisko wpisane)</translation>
    </message>
    <message>
        <source>Checked and signed by</source>
        <translation>Skontrolował i podpisał</translation>
    </message>
    <message>
        <source>Signed by the engineer (name typed)</source>
        <translation>Podpis inżyniera (nazwisko wpisane)</translation>
    </message>
    <message>
        <source>no name given</source>
        <translation>nie podano nazwiska</translation>
    </message>
    <message>
        <source>Received and understood by</source>
        <translation>Odebrał(a) i zrozumiał(a)</translation>
    </message>
    <message>
        <source>not present, copy left: %1</source>
        <translation>nieobecny, pozostawiono kopię: %1</translation>
    </message>
    <message>
        <source>signed on the paper copy</source>
        <translation>podpisano na kopii papierowej</translation>
    </message>
    <message>
        <source>card %1, %2</source>
        <translation>karta %1, %2</translation>
    </message>
    <message>
        <source>The day on which the card of %1 runs out is not kept. Enter it under Firm, from the card.</source>
        <translation>Nie zapisano dnia, w którym traci ważność karta: %1. Wpisać go w części Firma, z karty.</translation>
    </message>
    <message>
        <source>The card of %1 ran out on %2. Whose registration has run out may not work on gas: enter the new card under Firm, or send somebody else.</source>
        <translation>Karta (%1) straciła ważność %2. Kto ma nieważną rejestrację, nie może pracować przy gazie: wpisać nową kartę w części Firma albo wysłać kogoś innego.</translation>
    </message>
    <message>
        <source>No categories of work are kept for %1. Enter them under Firm, from the back of the card.</source>
        <translation>Nie zapisano kategorii prac: %1. Wpisać je w części Firma, z odwrotu karty.</translation>
    </message>
    <message>
        <source>None of the engineer&apos;s categories is known to cover this: the usual one is %1. Look at the back of the card before you work.</source>
        <translation>O żadnej kategorii inżyniera nie wiadomo, że to obejmuje: zwykła to %1. Przed pracą sprawdzić odwrót karty.</translation>
    </message>
    <message>
        <source>The day on which the category %1 runs out is not kept. Enter it under Firm.</source>
        <translation>Nie zapisano dnia, w którym traci ważność kategoria %1. Wpisać go w części Firma.</translation>
    </message>
    <message>
        <source>The category %1 ran out on %2. Do not work on this until it is renewed.</source>
        <translation>Kategoria %1 straciła ważność %2. Nie pracować przy tym, dopóki nie zostanie odnowiona.</translation>
    </message>
    <message>
        <source>No calibration date is kept for this analyser. Enter it under Firm, instruments.</source>
        <translation>Dla tego analizatora nie zapisano daty wzorcowania. Wpisać ją w części Firma, przyrządy.</translation>
    </message>
    <message>
        <source>The analyser&apos;s calibration ran out on %1. Read again with one in calibration.</source>
        <translation>Wzorcowanie analizatora straciło ważność %1. Odczytać ponownie analizatorem z ważnym wzorcowaniem.</translation>
    </message>
    <message>
        <source>Which category covers this kind of appliance is not known here. Look at the back of the card before you work.</source>
        <translation>Nie wiadomo tu, która kategoria obejmuje ten rodzaj urządzenia. Przed pracą sprawdzić odwrót karty.</translation>
    </message>
    <message>
        <source>The card of %1 will have run out on %2, before that day. Whose registration has run out may not work on gas: enter the new card under Firm once it is there, or send somebody else.</source>
        <translation>Karta (%1) straci ważność %2, przed tym dniem. Kto ma nieważną rejestrację, nie może pracować przy gazie: wpisać nową kartę w części Firma, gdy już będzie, albo wysłać kogoś innego.</translation>
    </message>
    <message>
        <source>The category %1 will have run out on %2, before that day. It has to be renewed before this is worked on.</source>
        <translation>Kategoria %1 straci ważność %2, przed tym dniem. Trzeba ją odnowić przed pracą przy tym.</translation>
    </message>
    <message>
        <source>not said yet</source>
        <translation>jeszcze nie podano</translation>
    </message>
    <message>
        <source>Immediately Dangerous</source>
        <translation>Immediately Dangerous (bezpośrednie zagrożenie)</translation>
    </message>
    <message>
        <source>At Risk</source>
        <translation>At Risk (zagrożenie)</translation>
    </message>
    <message>
        <source>Reminder</source>
        <translation>Przypomnienie</translation>
    </message>
    <message>
        <source>No access</source>
        <translation>Brak dostępu</translation>
    </message>
    <message>
        <source>Covering letter</source>
        <translation>List przewodni</translation>
    </message>
    <message>
        <source>to whom the letter goes</source>
        <translation>do kogo idzie list</translation>
    </message>
    <message>
        <source>address of the premises</source>
        <translation>adres obiektu</translation>
    </message>
    <message>
        <source>date by which the check is due</source>
        <translation>data, do której trzeba wykonać kontrolę</translation>
    </message>
    <message>
        <source>date when nobody could be let in</source>
        <translation>data, kiedy nie można było wejść</translation>
    </message>
    <message>
        <source>date of the work</source>
        <translation>data pracy</translation>
    </message>
    <message>
        <source>date of the letter</source>
        <translation>data listu</translation>
    </message>
    <message>
        <source>name of the firm</source>
        <translation>nazwa firmy</translation>
    </message>
    <message>
        <source>telephone of the firm</source>
        <translation>telefon firmy</translation>
    </message>
    <message>
        <source>e-mail of the firm</source>
        <translation>e-mail firmy</translation>
    </message>
    <message>
        <source>registration number of the firm</source>
        <translation>numer rejestracyjny firmy</translation>
    </message>
    <message>
        <source>A habit of the trade, with no source. It advises; it neither passes nor fails anything alone.</source>
        <translation>Zwyczaj branży, bez źródła. Doradza; sam niczego nie uznaje za spełnione ani niespełnione.</translation>
    </message>
    <message>
        <source>Read in the law, in the standard&apos;s or its publisher&apos;s own words, or in a regulator&apos;s, register&apos;s or certification body&apos;s text. It decides.</source>
        <translation>Przeczytano w prawie, we własnych słowach normy lub jej wydawcy albo w tekście urzędu, rejestru lub jednostki certyfikującej. Rozstrzyga.</translation>
    </message>
    <message>
        <source>Read in training notes or the trade press. Beyond it a test fails; within it, look again until the firm has confirmed it from its own copy.</source>
        <translation>Przeczytano w materiałach szkoleniowych lub prasie branżowej. Po przekroczeniu badanie nie spełnia wymagań; w granicach sprawdzić ponownie, dopóki firma nie potwierdzi z własnego egzemplarza.</translation>
    </message>
    <message>
        <source>Recalled from the named standard, not read. Beyond it a test fails; within it, look again until the firm has confirmed it from its own copy. Nothing passes on memory alone.</source>
        <translation>Z pamięci wskazanej normy, nie przeczytano. Po przekroczeniu badanie nie spełnia wymagań; w granicach sprawdzić ponownie, dopóki firma nie potwierdzi z własnego egzemplarza. Nic nie spełnia wymagań na podstawie samej pamięci.</translation>
    </message>
    <message>
        <source>Entered or confirmed by the firm from its own copy, with name and date. It decides, and replaces the value that came with the program.</source>
        <translation>Wpisane lub potwierdzone przez firmę z własnego egzemplarza, z nazwiskiem i datą. Rozstrzyga i zastępuje wartość dostarczoną z programem.</translation>
    </message>
    <message>
        <source>From the appliance maker&apos;s instructions, kept with the appliance. It decides before all others.</source>
        <translation>Z instrukcji producenta urządzenia, przechowywane przy urządzeniu. Rozstrzyga przed wszystkimi innymi.</translation>
    </message>
    <message>
        <source>Nothing can be said of a leak without the volume of what was tested: enter meter and pipework.</source>
        <translation>Bez objętości tego, co badano, nie można nic powiedzieć o nieszczelności: podaj gazomierz i przewody.</translation>
    </message>
    <message>
        <source>Too little to go by: say where the stages begin. A stage needs 20 readings over 20 seconds, above nought.</source>
        <translation>Za mało, by coś powiedzieć: wskaż, gdzie zaczynają się etapy. Etap wymaga 20 odczytów przez 20 sekund, powyżej zera.</translation>
    </message>
    <message>
        <source>Settled when the timing began: settling alone could move the pressure by at most %1 in the timed minutes.</source>
        <translation>Ustabilizowane, gdy zaczął się pomiar czasu: sama stabilizacja mogła zmienić ciśnienie najwyżej o %1 w mierzonych minutach.</translation>
    </message>
    <message>
        <source>Not settled when the timing began: settling alone moves the pressure by about %1 in the timed minutes. Wait %2 more.</source>
        <translation>Nieustabilizowane, gdy zaczął się pomiar czasu: sama stabilizacja zmienia ciśnienie o około %1 w mierzonych minutach. Odczekaj jeszcze %2.</translation>
    </message>
    <message>
        <source>Not settled when the timing began: settling alone moves the pressure by about %1 in the timed minutes, and half an hour more would not do.</source>
        <translation>Nieustabilizowane, gdy zaczął się pomiar czasu: sama stabilizacja zmienia ciśnienie o około %1 w mierzonych minutach, a kolejne pół godziny nie wystarczy.</translation>
    </message>
    <message>
        <source>Whether it was settled when the timing began can&apos;t be told: wait %1 more to be sure.</source>
        <translation>Nie można powiedzieć, czy było ustabilizowane, gdy zaczął się pomiar czasu: dla pewności odczekaj jeszcze %1.</translation>
    </message>
    <message>
        <source>Whether it was settled when the timing began can&apos;t be told.</source>
        <translation>Nie można powiedzieć, czy było ustabilizowane, gdy zaczął się pomiar czasu.</translation>
    </message>
    <message>
        <source>Gas coming in at %1: %2, between %3 and %4, 95 times in a hundred.</source>
        <translation>Dopływ gazu przy %1: %2, między %3 a %4, 95 razy na sto.</translation>
    </message>
    <message>
        <source>Leak at %1: %2, between %3 and %4, 95 times in a hundred.</source>
        <translation>Nieszczelność przy %1: %2, między %3 a %4, 95 razy na sto.</translation>
    </message>
    <message>
        <source>Before it was connected the gauge stood at zero (%1).</source>
        <translation>Przed podłączeniem manometr stał na zerze (%1).</translation>
    </message>
    <message>
        <source>Before it was connected the gauge read %1, which is not zero: zero it, and begin again.</source>
        <translation>Przed podłączeniem manometr wskazywał %1, co nie jest zerem: wyzeruj go i zacznij od nowa.</translation>
    </message>
    <message>
        <source>A stuck gauge: it stands still though the pressure was changed. Nothing can be read from it; check the gauge and its tube, and test again.</source>
        <translation>Zacięty manometr: stoi w miejscu, choć ciśnienie zmieniono. Niczego nie można z niego odczytać; sprawdź manometr i jego wężyk i powtórz badanie.</translation>
    </message>
    <message>
        <source>Rising while the valve was shut for let-by: the valve lets by, or the pipe warms. Stop, and find out which.</source>
        <translation>Ciśnienie rosło przy zamkniętym zaworze (próba przepuszczania): zawór przepuszcza albo rura się ogrzewa. Przerwij i ustal, co z tego.</translation>
    </message>
    <message>
        <source>A steady fall that cooling does not explain: look for a leak.</source>
        <translation>Stały spadek, którego nie tłumaczy stygnięcie: szukaj nieszczelności.</translation>
    </message>
    <message>
        <source>A leak that warming hides: without the warming the pressure would have fallen further. Look for a leak.</source>
        <translation>Nieszczelność ukryta przez ogrzewanie się: bez niego ciśnienie spadłoby bardziej. Szukaj nieszczelności.</translation>
    </message>
    <message>
        <source>Rising steadily: gas lets by, or the pipe goes on warming.</source>
        <translation>Stały wzrost: zawór przepuszcza gaz albo rura nadal się ogrzewa.</translation>
    </message>
    <message>
        <source>The fall is what cooling explains, as far as this trace can tell.</source>
        <translation>Spadek tłumaczy się stygnięciem, na ile pozwala to powiedzieć ten przebieg.</translation>
    </message>
    <message>
        <source>The rise is what warming explains, as far as this trace can tell.</source>
        <translation>Wzrost tłumaczy się ogrzewaniem, na ile pozwala to powiedzieć ten przebieg.</translation>
    </message>
    <message>
        <source>Nothing moves, as far as this trace can tell.</source>
        <translation>Nic się nie zmienia, na ile pozwala to powiedzieć ten przebieg.</translation>
    </message>
    <message>
        <source>Half of the pressure or more is gone: a leak or an open end, until it is shown to be neither. Look for it.</source>
        <translation>Zniknęła połowa ciśnienia lub więcej: to nieszczelność albo otwarty koniec, dopóki nie wykaże się, że ani jedno, ani drugie. Szukaj jej.</translation>
    </message>
    <message>
        <source>Can&apos;t tell: wait longer, or take a finer gauge.</source>
        <translation>Nie można powiedzieć: odczekaj dłużej albo weź dokładniejszy manometr.</translation>
    </message>
    <message>
        <source>The smallest leak that this trace could have shown: %1.</source>
        <translation>Najmniejsza nieszczelność, jaką ten przebieg mógł wykazać: %1.</translation>
    </message>
    <message>
        <source>In these figures the volume may be off by %1, either way.</source>
        <translation>W tych liczbach objętość może odbiegać o %1 w każdą stronę.</translation>
    </message>
    <message>
        <source>The volume is taken as exact.</source>
        <translation>Przyjęto, że objętość jest dokładna.</translation>
    </message>
    <message>
        <source>A drift of the gauge of %1 in a minute, either way, is in these figures.</source>
        <translation>W tych liczbach uwzględniono dryft manometru %1 na minutę w każdą stronę.</translation>
    </message>
    <message>
        <source>No drift of the gauge is in these figures.</source>
        <translation>W tych liczbach nie uwzględniono dryftu manometru.</translation>
    </message>
    <message>
        <source>Zero check at %1, open to the air: the gauge read %2, which is zero within its step of %3.</source>
        <translation>Sprawdzenie zera o %1, przy otwartym króćcu: manometr wskazywał %2, co jest zerem w granicach jego działki %3.</translation>
    </message>
    <message>
        <source>Zero check at %1, open to the air: the gauge read %2, which is not zero within its step of %3.</source>
        <translation>Sprawdzenie zera o %1, przy otwartym króćcu: manometr wskazywał %2, co nie jest zerem w granicach jego działki %3.</translation>
    </message>
    <message>
        <source>The first less the second: %1 when the timing began, %2 at its end, %3 where they were furthest apart (after %4).</source>
        <translation>Pierwszy minus drugi: %1, gdy zaczął się pomiar czasu, %2 na jego końcu, %3 tam, gdzie różniły się najbardziej (po %4).</translation>
    </message>
    <message>
        <source>The first less the second: %1 at the beginning, %2 at the end, %3 where they were furthest apart (after %4).</source>
        <translation>Pierwszy minus drugi: %1 na początku, %2 na końcu, %3 tam, gdzie różniły się najbardziej (po %4).</translation>
    </message>
    <message>
        <source>Their steps allow %1: the two gauges agree.</source>
        <translation>Ich działki dopuszczają %1: oba manometry są zgodne.</translation>
    </message>
    <message>
        <source>Their steps allow %1: at the beginning and at the end the two gauges agree, in between they do not.</source>
        <translation>Ich działki dopuszczają %1: na początku i na końcu oba manometry są zgodne, pomiędzy nie.</translation>
    </message>
    <message>
        <source>Their steps allow %1: the two gauges do not agree. Find out which of them is right.</source>
        <translation>Ich działki dopuszczają %1: manometry nie są zgodne. Ustal, który z nich wskazuje prawidłowo.</translation>
    </message>
    <message>
        <source>Watched beside it: %1, %2 readings.</source>
        <translation>Obserwowany obok niego: %1, odczytów %2.</translation>
    </message>
    <message>
        <source>The two can&apos;t be compared: of one no step is known, or they never read at the same time.</source>
        <translation>Nie można ich porównać: działka jednego nie jest znana albo nigdy nie wskazywały jednocześnie.</translation>
    </message>
    <message>
        <source>The second gauge: %1</source>
        <translation>Drugi manometr: %1</translation>
    </message>
    <message>
        <source>Where nothing is said of how far a volume may be off, it is taken as exact.</source>
        <translation>Gdzie nie podano, o ile objętość może odbiegać, przyjęto, że jest dokładna.</translation>
    </message>
    <message>
        <source>How far the volume may be off</source>
        <translation>O ile objętość może odbiegać</translation>
    </message>
    <message>
        <source>The gauge was silent for %1 in all; nothing is put in the place of what was not read.</source>
        <translation>Manometr milczał łącznie przez %1; w miejsce tego, czego nie odczytano, nic nie wstawiono.</translation>
    </message>
    <message>
        <source>%1: %2 readings over %3, one step %4</source>
        <translation>%1: odczytów %2 przez %3, jedna działka %4</translation>
    </message>
    <message>
        <source>%1: %2 readings over %3</source>
        <translation>%1: odczytów %2 przez %3</translation>
    </message>
    <message>
        <source>SIMULATION, for practice: %1</source>
        <translation>SYMULACJA, do ćwiczeń: %1</translation>
    </message>
    <message>
        <source>The verdict is by the standard&apos;s rule of the readings at start and end; the trace is evidence beside it.</source>
        <translation>Orzeczenie wynika z reguły normy o odczytach na początku i na końcu; przebieg jest dowodem obok niego.</translation>
    </message>
    <message>
        <source>let-by begins</source>
        <translation>początek próby przepuszczania</translation>
    </message>
    <message>
        <source>settling begins</source>
        <translation>początek stabilizacji</translation>
    </message>
    <message>
        <source>timing begins</source>
        <translation>początek pomiaru czasu</translation>
    </message>
    <message>
        <source>test ends</source>
        <translation>koniec badania</translation>
    </message>
    <message>
        <source>valve shut</source>
        <translation>zawór zamknięty</translation>
    </message>
    <message>
        <source>pump removed</source>
        <translation>pompka odłączona</translation>
    </message>
    <message>
        <source>door opened</source>
        <translation>drzwi otwarte</translation>
    </message>
    <message>
        <source>seconds since the trace began</source>
        <translation>sekundy od początku przebiegu</translation>
    </message>
    <message>
        <source>The whole trace</source>
        <translation>Cały przebieg</translation>
    </message>
    <message>
        <source>fitted: leak and settling together</source>
        <translation>dopasowane: nieszczelność i stabilizacja razem</translation>
    </message>
    <message>
        <source>The timed minutes</source>
        <translation>Mierzone minuty</translation>
    </message>
    <message>
        <source>read by the gauge</source>
        <translation>odczyt manometru</translation>
    </message>
    <message>
        <source>What the gauge saw</source>
        <translation>Co widział manometr</translation>
    </message>
    <message>
        <source>It moved by %1 in %2 of let-by.</source>
        <translation>Zmieniło się o %1 w ciągu %2 próby przepuszczania.</translation>
    </message>
    <message>
        <source>Data badge</source>
        <translation>Tabliczka znamionowa</translation>
    </message>
    <message>
        <source>Serial, pitch, berth or hull number</source>
        <translation>Numer seryjny, stanowiska, miejsca postoju lub kadłuba</translation>
    </message>
    <message>
        <source>Used</source>
        <translation>Użytkowanie</translation>
    </message>
    <message>
        <source>Cylinders: type and size</source>
        <translation>Butle: rodzaj i wielkość</translation>
    </message>
    <message>
        <source>Where the cylinders stand</source>
        <translation>Gdzie stoją butle</translation>
    </message>
    <message>
        <source>Cylinders upright and secured</source>
        <translation>Butle w pionie i zamocowane</translation>
    </message>
    <message>
        <source>Regulator: type</source>
        <translation>Regulator: rodzaj</translation>
    </message>
    <message>
        <source>Regulator: date on it</source>
        <translation>Regulator: data na nim</translation>
    </message>
    <message>
        <source>Hoses: dates on them</source>
        <translation>Węże: daty na nich</translation>
    </message>
    <message>
        <source>Over-pressure and under-pressure shut-off</source>
        <translation>Odcięcie przy nadmiernym i zbyt niskim ciśnieniu</translation>
    </message>
    <message>
        <source>Lock-up pressure</source>
        <translation>Ciśnienie zamknięcia</translation>
    </message>
    <message>
        <source>Bubble tester</source>
        <translation>Tester pęcherzykowy</translation>
    </message>
    <message>
        <source>Fixed ventilation, high and low</source>
        <translation>Stała wentylacja, górna i dolna</translation>
    </message>
    <message>
        <source>Fixed vents, high</source>
        <translation>Stałe otwory, górne</translation>
    </message>
    <message>
        <source>Fixed vents, low</source>
        <translation>Stałe otwory, dolne</translation>
    </message>
    <message>
        <source>Drain and bilge openings</source>
        <translation>Otwory odpływowe i zęzowe</translation>
    </message>
    <message>
        <source>Interlock of extract and gas</source>
        <translation>Blokada wyciągu i gazu</translation>
    </message>
    <message>
        <source>Interlock proved by a test</source>
        <translation>Blokada sprawdzona próbą</translation>
    </message>
    <message>
        <source>Emergency shut-off</source>
        <translation>Odcięcie awaryjne</translation>
    </message>
    <message>
        <source>Gas proving</source>
        <translation>Kontrola szczelności przed otwarciem gazu</translation>
    </message>
    <message>
        <source>Canopy and fan</source>
        <translation>Okap i wentylator</translation>
    </message>
    <message>
        <source>Make-up air</source>
        <translation>Powietrze uzupełniające</translation>
    </message>
    <message>
        <source>Where the kitchen&apos;s air was read</source>
        <translation>Gdzie zmierzono powietrze w kuchni</translation>
    </message>
    <message>
        <source>CO₂ in the kitchen, at the start</source>
        <translation>CO₂ w kuchni, na początku</translation>
    </message>
    <message>
        <source>CO₂ in the kitchen, at the end</source>
        <translation>CO₂ w kuchni, na końcu</translation>
    </message>
    <message>
        <source>CO in the kitchen</source>
        <translation>CO w kuchni</translation>
    </message>
    <message>
        <source>Capacity</source>
        <translation>Pojemność</translation>
    </message>
    <message>
        <source>Expansion vessel or space</source>
        <translation>Naczynie lub przestrzeń wzbiorcza</translation>
    </message>
    <message>
        <source>Temperature and pressure relief valve</source>
        <translation>Zawór bezpieczeństwa temperatury i ciśnienia</translation>
    </message>
    <message>
        <source>Pressure reducing and expansion valves</source>
        <translation>Zawory redukcyjny i wzbiorczy</translation>
    </message>
    <message>
        <source>Discharge pipe D1</source>
        <translation>Rura zrzutowa D1</translation>
    </message>
    <message>
        <source>Discharge pipe D2</source>
        <translation>Rura zrzutowa D2</translation>
    </message>
    <message>
        <source>Number of the competence for it</source>
        <translation>Numer uprawnienia do niego</translation>
    </message>
    <message>
        <source>How it is sealed</source>
        <translation>Jak jest zaślepione</translation>
    </message>
    <message>
        <source>Where it is sealed</source>
        <translation>Gdzie jest zaślepione</translation>
    </message>
    <message>
        <source>Seal proved free of leaks</source>
        <translation>Szczelność zaślepienia sprawdzona</translation>
    </message>
    <message>
        <source>Label on it that says so</source>
        <translation>Etykieta, która to mówi</translation>
    </message>
    <message>
        <source>leisure vehicle, its LPG system</source>
        <translation>pojazd turystyczny, jego instalacja LPG</translation>
    </message>
    <message>
        <source>boat, its LPG system</source>
        <translation>łódź, jej instalacja LPG</translation>
    </message>
    <message>
        <source>catering appliance</source>
        <translation>urządzenie gastronomiczne</translation>
    </message>
    <message>
        <source>unvented cylinder, noted only</source>
        <translation>zasobnik ciśnieniowy, tylko odnotowany</translation>
    </message>
    <message>
        <source>decommissioned and capped</source>
        <translation>wycofane z użytku i zaślepione</translation>
    </message>
    <message>
        <source>let</source>
        <translation>wynajmowane</translation>
    </message>
    <message>
        <source>privately</source>
        <translation>prywatnie</translation>
    </message>
    <message>
        <source>no bubbles</source>
        <translation>brak pęcherzyków</translation>
    </message>
    <message>
        <source>bubbles: it leaks</source>
        <translation>pęcherzyki: nieszczelność</translation>
    </message>
    <message>
        <source>by air flow</source>
        <translation>przez przepływ powietrza</translation>
    </message>
    <message>
        <source>by air pressure</source>
        <translation>przez ciśnienie powietrza</translation>
    </message>
    <message>
        <source>by CO₂</source>
        <translation>przez CO₂</translation>
    </message>
    <message>
        <source>with an appropriate fitting</source>
        <translation>odpowiednią złączką</translation>
    </message>
    <message>
        <source>shut at a valve only</source>
        <translation>zamknięte tylko zaworem</translation>
    </message>
    <message>
        <source>could not be seen</source>
        <translation>nie było widoczne</translation>
    </message>
    <message>
        <source>Decommissioned and capped</source>
        <translation>Wycofane z użytku i zaślepione</translation>
    </message>
    <message>
        <source>The LPG system</source>
        <translation>Instalacja LPG</translation>
    </message>
    <message>
        <source>The kitchen</source>
        <translation>Kuchnia</translation>
    </message>
    <message>
        <source>Further</source>
        <translation>Dalsze</translation>
    </message>
    <message>
        <source>Unvented cylinder: noted only, no judgement of the gas work</source>
        <translation>Zasobnik ciśnieniowy: tylko odnotowany, bez oceny robót gazowych</translation>
    </message>
    <message>
        <source>noted only</source>
        <translation>tylko odnotowany</translation>
    </message>
    <message>
        <source>Decommissioned and capped: it cannot be used, and nothing was measured of it.</source>
        <translation>Wycofane z użytku i zaślepione: nie można go używać i niczego w nim nie zmierzono.</translation>
    </message>
    <message>
        <source>Pipes shut off</source>
        <translation>Rury odcięte</translation>
    </message>
    <message>
        <source>the meter and its joints</source>
        <translation>gazomierz i jego połączenia</translation>
    </message>
    <message>
        <source>pipe %1</source>
        <translation>rura %1</translation>
    </message>
    <message>
        <source>what is connected at pipe %1</source>
        <translation>to, co przyłączone do rury %1</translation>
    </message>
    <message>
        <source>the appliances</source>
        <translation>urządzenia</translation>
    </message>
    <message>
        <source>%1, repeated with appliances isolated</source>
        <translation>%1, powtórzone przy odciętych urządzeniach</translation>
    </message>
    <message>
        <source>appliances</source>
        <translation>urządzenia</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (od %2 do %3)</translation>
    </message>
    <message>
        <source>not compared: say whether appliances were connected</source>
        <translation>nie porównano: podać, czy urządzenia były przyłączone</translation>
    </message>
    <message>
        <source>not compared: the list has no pipe “%1”</source>
        <translation>nie porównano: na liście nie ma rury „%1”</translation>
    </message>
    <message>
        <source>not compared: say in the pipe list what each pipe follows</source>
        <translation>nie porównano: podać na liście rur, za czym jest każda rura</translation>
    </message>
    <message>
        <source>not compared: the volume is not known</source>
        <translation>nie porównano: objętość nie jest znana</translation>
    </message>
    <message>
        <source>not compared: readings or times are missing</source>
        <translation>nie porównano: brak odczytów lub czasów</translation>
    </message>
    <message>
        <source>not compared: no gauge is chosen</source>
        <translation>nie porównano: nie wybrano manometru</translation>
    </message>
    <message>
        <source>Looking for the leak: the tests compared</source>
        <translation>Szukanie nieszczelności: porównanie prób</translation>
    </message>
    <message>
        <source>Shut off</source>
        <translation>Odcięte</translation>
    </message>
    <message>
        <source>Volume reached</source>
        <translation>Objętość objęta próbą</translation>
    </message>
    <message>
        <source>Leak, and its 95 % interval</source>
        <translation>Wyciek i jego przedział 95 %</translation>
    </message>
    <message>
        <source>%1, by its trace</source>
        <translation>%1, według zapisu</translation>
    </message>
    <message>
        <source>Nothing to compare yet: test again with one branch shut off, and say which.</source>
        <translation>Jeszcze nic do porównania: powtórzyć próbę przy jednej odciętej gałęzi i podać, której.</translation>
    </message>
    <message>
        <source>The tests do not agree: no leaks together make such readings. The gas warmed or cooled, a valve let by, or something else was changed between them. Test again.</source>
        <translation>Próby są sprzeczne: żadne wycieki razem nie dają takich odczytów. Gaz się ogrzał lub ochłodził, zawór przepuszczał albo zmieniono między nimi coś innego. Powtórzyć próbę.</translation>
    </message>
    <message>
        <source>There must be a leak here: %1.</source>
        <translation>Tutaj musi być wyciek: %1.</translation>
    </message>
    <message>
        <source>More than one place leaks: %1.</source>
        <translation>Nieszczelne jest więcej niż jedno miejsce: %1.</translation>
    </message>
    <message>
        <source>Something leaks, and these tests do not tell where. Shut off one branch more and test again, longer or with a finer gauge.</source>
        <translation>Coś jest nieszczelne, a te próby nie mówią gdzie. Odciąć jeszcze jedną gałąź i powtórzyć próbę, dłużej lub dokładniejszym manometrem.</translation>
    </message>
    <message>
        <source>None of these tests shows a leak. That is not to say that there is none.</source>
        <translation>Żadna z tych prób nie wykazuje wycieku. Nie znaczy to, że go nie ma.</translation>
    </message>
    <message>
        <source>%1: %2 to %3</source>
        <translation>%1: od %2 do %3</translation>
    </message>
    <message>
        <source>%1: no leak shown, %2 at most</source>
        <translation>%1: nie wykazano wycieku, najwyżej %2</translation>
    </message>
    <message>
        <source>This helps the search. The verdict is by the standard&apos;s rule of each test&apos;s readings, and what no test shows to leak is not thereby tight.</source>
        <translation>To pomoc w szukaniu. Werdykt zapada według reguły normy dla odczytów każdej próby, a to, czego żadna próba nie wykazuje jako nieszczelne, nie jest przez to szczelne.</translation>
    </message>
    <message>
        <source>not compared: something was changed in between</source>
        <translation>nie porównano: w międzyczasie coś zmieniono</translation>
    </message>
    <message>
        <source>Checked: record %1</source>
        <translation>Skontrolowano: protokół %1</translation>
    </message>
    <message>
        <source>Checked, by an earlier record</source>
        <translation>Skontrolowano, według wcześniejszego protokołu</translation>
    </message>
    <message>
        <source>Record %1 issued</source>
        <translation>Wystawiono protokół %1</translation>
    </message>
    <message>
        <source>Record %1 declared void</source>
        <translation>Protokół %1 uznano za nieważny</translation>
    </message>
    <message>
        <source>Record %1 sent</source>
        <translation>Wysłano protokół %1</translation>
    </message>
    <message>
        <source>Visit</source>
        <translation>Wizyta</translation>
    </message>
    <message>
        <source>Letter sent</source>
        <translation>Wysłano list</translation>
    </message>
    <message>
        <source>Copy of the record handed over</source>
        <translation>Przekazano kopię protokołu</translation>
    </message>
    <message>
        <source>Operating information handed over</source>
        <translation>Przekazano informacje o obsłudze</translation>
    </message>
    <message>
        <source>Telephone call</source>
        <translation>Rozmowa telefoniczna</translation>
    </message>
    <message>
        <source>A day was proposed</source>
        <translation>Zaproponowano dzień</translation>
    </message>
    <message>
        <source>Booked</source>
        <translation>Umówiono wizytę</translation>
    </message>
    <message>
        <source>Booked, and done</source>
        <translation>Umówiono wizytę i wykonano</translation>
    </message>
    <message>
        <source>Booking cancelled</source>
        <translation>Odwołano wizytę</translation>
    </message>
    <message>
        <source>Booked, and no access</source>
        <translation>Umówiono wizytę, brak dostępu</translation>
    </message>
    <message>
        <source>Unsafe situation, a step</source>
        <translation>Sytuacja niebezpieczna, krok</translation>
    </message>
    <message>
        <source>The window opens</source>
        <translation>Okres kontroli się otwiera</translation>
    </message>
    <message>
        <source>Deadline of the next check</source>
        <translation>Termin następnej kontroli</translation>
    </message>
    <message>
        <source>in person</source>
        <translation>osobiście</translation>
    </message>
    <message>
        <source>by letter</source>
        <translation>listem</translation>
    </message>
    <message>
        <source>by telephone</source>
        <translation>telefonicznie</translation>
    </message>
    <message>
        <source>by text message</source>
        <translation>SMS-em</translation>
    </message>
    <message>
        <source>another way</source>
        <translation>w inny sposób</translation>
    </message>
    <message>
        <source>Try again and tell the landlord</source>
        <translation>Spróbować ponownie i powiadomić wynajmującego</translation>
    </message>
    <message>
        <source>Ask for the last check</source>
        <translation>Zapytać o ostatnią kontrolę</translation>
    </message>
    <message>
        <source>Tell the landlord</source>
        <translation>Powiadomić wynajmującego</translation>
    </message>
    <message>
        <source>Book the check</source>
        <translation>Umówić kontrolę</translation>
    </message>
    <message>
        <source>Ring and book now</source>
        <translation>Zadzwonić i umówić teraz</translation>
    </message>
    <message>
        <source>Attend</source>
        <translation>Stawić się</translation>
    </message>
    <message>
        <source>Nothing to do yet</source>
        <translation>Na razie nic do zrobienia</translation>
    </message>
    <message>
        <source>What was done for the gas safety check</source>
        <translation>Co zrobiono w sprawie kontroli bezpieczeństwa gazowego</translation>
    </message>
    <message>
        <source>Deadline of the next</source>
        <translation>Termin następnej</translation>
    </message>
    <message>
        <source>Letters and calls since the last check</source>
        <translation>Listy i rozmowy od ostatniej kontroli</translation>
    </message>
    <message>
        <source>Attempts without access since the last check</source>
        <translation>Próby bez dostępu od ostatniej kontroli</translation>
    </message>
    <message>
        <source>look again: perhaps only by %1</source>
        <translation>sprawdzić ponownie: być może dopiero do %1</translation>
    </message>
    <message>
        <source>What comes next</source>
        <translation>Co dalej</translation>
    </message>
    <message>
        <source>What this is worth</source>
        <translation>Ile to jest warte</translation>
    </message>
    <message>
        <source>At least three attempts are what inspectors look for. They are no safe harbour: a court decides on the facts.</source>
        <translation>Inspektorzy oczekują co najmniej trzech prób. Nie dają one pewnej ochrony: o faktach rozstrzyga sąd.</translation>
    </message>
    <message>
        <source>A landlord has to show that all reasonable steps were taken. Keep every letter. Nobody may use force to get in.</source>
        <translation>Wynajmujący musi wykazać, że podjęto wszystkie rozsądne kroki. Proszę zachować każdy list. Nikomu nie wolno wejść siłą.</translation>
    </message>
    <message>
        <source>Source: HSE, “How far do I need to go if the tenant prevents access for a gas safety check?”</source>
        <translation>Źródło: HSE, “How far do I need to go if the tenant prevents access for a gas safety check?”</translation>
    </message>
    <message>
        <source>However many attempts were made, the next step stays: try again and tell the landlord.</source>
        <translation>Niezależnie od liczby prób następny krok pozostaje ten sam: spróbować ponownie i powiadomić wynajmującego.</translation>
    </message>
    <message>
        <source>What was done, in order of time</source>
        <translation>Co zrobiono, w kolejności czasu</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Dzień</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Godzina</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Co</translation>
    </message>
    <message>
        <source>By whom, how, and what came of it</source>
        <translation>Kto, jak i z jakim skutkiem</translation>
    </message>
    <message>
        <source>%1 (to come)</source>
        <translation>%1 (przyszłe)</translation>
    </message>
    <message>
        <source>%1, %2 at %3</source>
        <translation>%1, %2 o godz. %3</translation>
    </message>
    <message>
        <source>%1, to %2</source>
        <translation>%1, do: %2</translation>
    </message>
    <message>
        <source>left: %1</source>
        <translation>pozostawiono: %1</translation>
    </message>
    <message>
        <source>answer: %1</source>
        <translation>odpowiedź: %1</translation>
    </message>
    <message>
        <source>came of it: %1</source>
        <translation>wynik: %1</translation>
    </message>
    <message>
        <source>next: %1</source>
        <translation>następnie: %1</translation>
    </message>
    <message>
        <source>on %1</source>
        <translation>dnia %1</translation>
    </message>
    <message>
        <source>word for word below</source>
        <translation>dosłownie poniżej</translation>
    </message>
    <message>
        <source>photograph below</source>
        <translation>fotografia poniżej</translation>
    </message>
    <message>
        <source>No. %1, word for word: %2</source>
        <translation>Nr %1, dosłownie: %2</translation>
    </message>
    <message>
        <source>No. %1: %2</source>
        <translation>Nr %1: %2</translation>
    </message>
</context>
</TS>
