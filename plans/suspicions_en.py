"""Which words usually go with which warning sign. Written by `python -m tests.bench.doubting`, not by hand."""

WEIGHTS = """
! 6 -6 -2 -4; !> 2 -1 -1 -3; # 5 -1 -3 -3; #> 4 -1 -2 -4; % 6 -3 -2 -1; %> 4 -2 -2 -1; & 1 -5 4 -6; ( 3
-2 0 -1; ) 5 -4 -1 -1; )> 2 -1 -1 -1; + 6 -5 -3 -4; , 1 -1 0 -1; ,> 8 -6 -4 -7; - 7 -4 -1 -1; . 0 -1 -2
0; .> 3 -2 -1 -5; / 5 0 -3 -1; 3 -5 5 -3 -1; 5:45 8 -6 -1 -2; 6 1 0 0 -1; 6:30 4 -5 -3 -4; 6:45 2 -1 0 0;
7:30 6 -2 0 -3; : 7 -4 -2 -3; :> 3 -1 -1 -1; <! 8 -6 -4 -2; <# 1 -3 0 -9; <, 9 -4 -8 -5; <- 1 -1 0 0; <.
11 -7 -3 -6; <: 6 -2 -2 -2; <? 7 -3 -3 -1; <a 3 -9 -2 -4; <about 8 -7 -5 -6; <aching 3 -3 0 -1; <achy 6
-6 -2 -2; <affirmative 7 -3 -3 -6; <after 2 -7 -7 -1; <again 6 -7 -10 -4; <all 6 -3 -6 -6; <almost 2 -4
-4 3; <already 3 -9 -9 -2; <am 4 -8 -4 -4; <and 9 -8 -4 -6; <ankle -7 -5 7 -4; <ants 0 5 -3 -5; <anymore
6 -5 -4 -4; <arm -6 6 -3 -12; <as 6 -5 0 -1; <at 1 0 -4 -7; <aye 3 -3 -3 -1; <baby 6 -5 -2 -1; <back 4 -1
0 -5; <bar 3 0 -1 0; <became 5 -8 -9 -7; <because 3 -2 -7 -4; <been 9 -9 0 -2; <before 6 -3 -6 -9; <bet 4
-3 -4 -3; <better 4 -1 -1 -2; <between 4 -5 -1 -4; <big -3 -4 3 -1; <bit 4 -2 -1 -5; <black -11 -3 6 -4;
<blacked -5 -4 -3 4; <bladder -4 -6 -4 4; <blurred -6 -4 -2 6; <body 4 -1 0 -3; <bonjour 3 -2 -1 0; <boss
3 -3 -3 -1; <both -4 3 2 -3; <breathtaking 3 -2 -1 -2; <bro 0 -3 -2 -1; <broke 4 -4 -5 -3; <bruh 5 -5 -3
-3; <bruise -4 -1 4 -1; <burned 2 -1 0 0; <burning -13 8 -6 1; <busy 3 -2 -2 -2; <but 6 -5 -10 -1;
<buttock 7 -6 0 1; <by 5 -3 -2 -2; <calf -3 -7 5 -2; <calves 6 -5 0 -3; <can -4 0 -1 -2; <cancel 4 -4 -4
-4; <change 4 -2 -1 -1; <chest -1 -5 -4 3; <coach -3 -4 1 0; <complete 5 -2 -2 -2; <completed 9 -7 -3 -1;
<could 2 2 -2 -4; <covid 8 -3 -2 -5; <day 3 -1 -1 0; <dead 11 -16 -2 -2; <dear 8 -5 -5 -1; <did 7 -5 -2
0; <dizzy -8 9 -1 -3; <do 6 -2 -1 -2; <doctor -1 0 0 2; <dog 13 -5 -16 -4; <doing 7 -4 -6 -1; <doms 4 -2
-4 -3; <done 3 -2 -3 -1; <down 10 -6 -4 -3; <dull 1 0 0 -1; <dun 5 -4 -3 -4; <during 3 -4 -4 -8; <effort
5 -3 -2 -2; <electric -4 6 -6 -3; <ever -4 -1 -5 3; <every 7 -6 -2 -3; <everything 0 -1 -5 -3; <exam 5 -4
0 -1; <except 6 -3 -3 -5; <exercise 4 -2 -3 -4; <face -10 -3 -5 9; <fainted -9 -4 -2 10; <feel 5 -7 -1 6;
<feeling 2 1 0 -6; <felt 1 -3 3 -11; <fever -9 -1 2 -6; <feverish -8 7 -3 -4; <fine 6 -2 -2 -2; <fingers
-13 13 -6 -4; <finish 4 -11 -2 1; <finished 3 -4 -4 -1; <finito 6 -4 -5 -5; <first 6 -6 -4 -5; <flu 5 -5
-1 -3; <food 5 -2 0 -4; <foot 1 0 -3 -6; <for 8 -4 -2 -3; <forgot 4 -2 -1 -2; <fr 5 -3 -2 -1; <from 6 -3
-2 -10; <gave 8 -2 -8 -3; <get 2 -1 -2 -4; <going 11 -3 -4 -9; <gone 6 -6 -6 -8; <good 6 -2 0 -4; <got 2
-4 -3 -7; <groin 0 -13 -4 2; <guests 3 0 0 -3; <guten 4 -1 -2 -2; <had 4 0 -6 -5; <haha 3 -3 -3 -5; <half
7 -9 -5 -3; <halfway 7 -8 -5 -3; <hand -6 4 0 -3; <hardly -2 -7 4 -6; <has 3 -5 -1 -6; <have 1 -6 -4 -3;
<head -3 2 -8 1; <health 2 0 0 -1; <heard -4 0 4 0; <heart -2 -7 -4 5; <heavy 2 -3 -1 -1; <held 3 -3 -1
-2; <hello 1 -1 -5 -1; <here 5 0 -4 0; <hey 5 -1 -1 -4; <hi 4 -3 -7 -2; <hip 3 -2 -3 -5; <hips 8 -7 -3
-3; <hot 10 -12 -1 -2; <how 13 -9 -5 -3; <hurts 6 -4 -9 -5; <i 1 -4 -2 -1; <ich 3 -1 -1 -1; <ill 6 -1 -3
-2; <in 9 -1 -4 -15; <inbox 4 -4 -2 -2; <is -6 -2 5 -8; <it 5 -4 -5 -8; <ja 4 -3 -1 -1; <jaw -15 -7 -8
14; <just 5 -2 -3 -5; <k 3 -3 -3 -3; <kid 4 -1 -1 -1; <kinda 8 -2 -3 -4; <kindly 7 -3 -3 -3; <knee 4 -6
-2 -5; <knees 8 -8 -3 -3; <last 1 1 -7 -4; <late 2 -1 -1 0; <later 8 -5 -3 -2; <left 2 -10 -3 1; <leg 1
-1 0 -7; <legs 1 3 -5 -13; <less 4 -2 -1 0; <light -10 5 -3 -3; <lighter 6 -3 -8 -1; <like -7 4 -2 -2;
<little 2 -2 0 0; <lol 7 -6 -5 -2; <long 2 -2 0 0; <lost -2 -1 -6 1; <lovely 4 -1 0 -4; <lowkey 2 -1 0
-1; <made 5 -1 -3 -3; <managed 9 -3 -4 -7; <mat 9 -1 -7 -5; <maybe 2 1 -8 -12; <me 10 -10 -11 -5; <might
3 -2 -3 -2; <migraine 7 -2 -3 -3; <missed 4 -2 -2 -1; <more 6 -3 -2 -2; <morning 4 -5 0 -6; <most 6 -2 -2
-3; <move 6 -6 -3 -2; <muscle 2 0 -1 0; <must 9 -5 -7 -8; <my -2 -3 -3 2; <nah 4 -3 -4 -3; <nearly 3 -6
-7 -1; <neck 5 -2 -2 -3; <new -3 -2 -2 1; <next 4 -2 0 -4; <ngl 7 -4 -1 -3; <night -8 12 -3 -4; <no 2 -3
-1 -4; <nope 6 -5 -2 -6; <not 11 -8 -5 -7; <nothing 9 -1 -1 -6; <notice -4 6 -3 -5; <noticed -3 3 -2 -7;
<now 6 -5 -7 -5; <numb -8 1 -9 5; <numbness -9 6 -8 -1; <of 6 -5 -4 -4; <ok 7 -6 -2 -2; <okay 5 -4 -1 -3;
<on 8 -12 -2 2; <one -3 -6 1 -1; <only 12 -7 -7 -6; <or 2 -2 -2 2; <ouch 5 -3 -3 -4; <outer -2 9 -6 -1;
<overslept 6 -3 -3 -1; <pain 4 -1 -5 -2; <palpitations -4 -9 -2 7; <part 7 -3 -6 -1; <passed -7 -4 -5 6;
<pause 6 -3 -2 -1; <phone 4 -3 0 -1; <physio 3 -3 -2 -4; <pins 0 1 -4 -3; <please 6 -2 -2 -3; <popped -6
-7 8 -4; <pose 3 -2 -1 -1; <power 7 -2 0 -5; <pressure -2 -5 -2 5; <probably 3 -3 -3 -3; <pulled 0 -8 2
-10; <put 3 -4 -3 -2; <quick 2 0 -2 0; <quit 4 -2 -2 -3; <qx 3 -8 -4 -4; <ran 5 -5 0 0; <rest 3 -1 -2 -1;
<right -7 -6 0 6; <room -6 6 -5 -7; <routine 2 -6 -1 4; <said 7 -6 -2 -2; <same 6 -4 -1 -1; <saw 1 -7 -9
3; <session 6 -2 -1 -4; <set 9 -7 -4 -3; <severe -6 -4 3 1; <sharp 2 -8 8 -3; <shooting -9 7 -5 -3;
<shorter 5 -3 -2 -2; <shot 8 -4 -3 -3; <should 11 1 -4 -9; <shoulder -4 -6 6 -2; <show 4 -2 -2 0; <si 6
-5 -4 -3; <since 0 -7 -4 2; <sir 4 -4 0 -3; <skipped 4 -3 -2 -5; <slept 9 -8 -1 0; <slight 6 -4 -6 -5;
<slipped -3 0 3 -2; <slurred -4 -4 -2 6; <so 3 -6 -4 -1; <some 8 -16 4 -2; <something 0 -9 2 -2; <sore 8
-6 -2 -1; <soreness 2 -5 4 -4; <sorry 7 -1 -2 -4; <speech 1 0 -2 -1; <started 10 -5 -1 -5; <stiff 4 0 -1
-2; <still 7 -6 -4 -9; <stomach 3 -2 -3 -1; <stop 14 -9 -5 -3; <stopped 5 -10 -2 -3; <stretch 1 -1 0 0;
<sudden -5 -8 -5 8; <suddenly 2 -6 -1 0; <swamped 1 0 0 0; <swollen -6 -1 7 -1; <take 3 -2 -3 -2;
<teacher 7 -1 -3 -5; <tender 5 -3 -4 0; <thank 4 -2 -2 -2; <thanks 7 -4 -2 -3; <that 9 -1 -1 -6; <the 2
-5 -4 -4; <there -3 2 0 -5; <thigh -8 -8 14 -2; <thing 8 -8 -4 -3; <this 3 0 -7 -9; <thought 6 0 -4 -4;
<thread 1 0 0 0; <three 5 -3 -1 -2; <threw 8 -6 -5 -2; <throbbing -5 -3 3 -2; <tight -1 -2 -2 3;
<tightness 2 -1 -1 1; <tingling -9 1 -3 2; <tingly -4 7 -3 -4; <to -3 1 0 2; <today 11 -9 -3 -7; <toes -4
4 -2 -2; <tomorrow 7 -2 -3 -4; <too 1 -6 3 -9; <took 9 -4 -6 -2; <travelling 4 -1 -1 -1; <tried 9 -2 -7
0; <twice 8 -7 -5 -4; <two 3 -3 -1 -3; <um 0 1 -1 -2; <unbearable -8 -7 7 -6; <unsubscribe 4 -4 -4 -4;
<up 0 1 -6 -2; <very 5 -2 -1 -3; <wakes -4 5 -4 -2; <walked 3 -2 -2 -2; <want 0 -2 -1 2; <was 3 -9 -4 1;
<watched 4 -4 -3 -2; <way 10 -6 -10 -7; <we 3 -1 0 -2; <weak -2 7 -4 -7; <weakness -8 7 -5 -5; <week 2 -1
-1 0; <weight -1 3 -11 -4; <well 8 -7 -1 -3; <went 0 5 0 -12; <wet -10 -3 -3 5; <what -3 -4 2 -6; <when 2
-2 -3 -7; <where 5 0 -1 -4; <which 5 -7 -4 -2; <while 7 -4 -6 -7; <who 8 -6 -7 -5; <whole 3 -3 0 0; <why
9 -6 -6 -4; <wife 2 0 0 -1; <wifi 3 -3 0 -2; <will 8 -2 -5 -1; <with -1 -4 -1 -3; <woke -3 5 -14 -8;
<words -2 -1 -2 3; <work 5 -3 -2 0; <worse 9 -10 -6 -2; <xx 4 -1 -3 0; <yeah 6 -5 -5 -3; <yep 2 -6 -5 -2;
<yes 4 -4 -2 -2; <yesterday 4 -6 -1 -2; <you 1 -2 -2 3; <yup 8 -4 -2 -7; <zero 1 0 -1 0; <zilch 5 -4 -5
-4; <✅ 5 -4 -3 -5; <❌ 5 -3 -3 -3; <👍 6 -2 -3 -3; <👎 5 -3 -3 -3; <💪 5 -4 -4 -4; <🔥 3 -3 -3 -3; <😴 3 -3 -4
-3; <🤒 5 -1 -3 -2; <🤷 6 -5 -5 -4; = 5 -2 -2 -1; ? 4 -2 -3 -7; ?> 2 -1 -3 -6; _ 12 -5 -4 -4; a -4 -2 -1
-2; a> -7 5 -8 -1; able 1 -8 0 2; about 3 -3 -2 -1; about> -2 -3 -4 4; accident -7 -8 -6 7; ache 2 -2 -8
-4; aches 5 -2 -8 -1; achilles 4 -3 0 -1; aching 6 -3 -9 -6; achy 10 -5 -3 -3; achy> 10 -5 -4 -2; across
6 -3 -3 -1; action 1 -1 -1 0; actually 8 -5 0 -4; advanced 6 -1 -1 -4; af -2 4 -2 -4; af> 5 -4 -1 -1;
affirmative 7 -3 -3 -6; afraid 9 -8 -2 -2; after -6 0 -1 -1; after> 1 -4 -6 1; afternoon 2 -1 0 -2;
afterwards -7 4 -4 1; again -4 7 -6 -5; again> 2 -2 -5 -1; age -2 -14 -7 3; age> 7 -1 0 -6; ago -2 -7 -3
1; air -7 -7 -1 8; airport 6 -5 -1 -7; alarm 5 -2 0 -4; all -2 0 0 -2; all> 6 -3 -2 -8; almost 5 -4 -2 1;
along -8 8 0 0; already 0 2 -7 -5; already> -5 5 -2 -8; also -3 -2 0 2; although 9 -4 -1 -7; always 7 0
-3 -6; am -7 2 -7 4; am> 1 0 -3 -8; amazing 6 -4 -5 -4; an -8 1 0 2; and -6 2 -1 1; and> 6 -6 -4 -15; ang
4 -1 -1 -4; ankle -9 -2 7 -14; ankle> 4 -3 -4 -2; ankles -6 -9 7 -3; another 5 -3 -3 -6; ants -8 10 -4
-8; any 0 -7 3 -8; any> 9 -4 -7 -6; anymore 1 0 -3 -2; anymore> 5 -4 -3 -3; anything 0 -8 -7 6; anyway -2
0 2 -3; anyway> 2 -1 -6 -3; anywhere 6 -4 -3 -3; apart 7 -7 -1 -4; app 7 -2 -1 -5; appointment 9 -7 -3
-5; appointment> 2 0 -1 -1; are 2 0 -6 -5; are> -2 -1 -1 1; area -6 -6 -3 6; arm -10 3 -1 1; arm> -4 0 3
-5; arms 7 -4 -3 -4; arms> 1 -1 0 0; around -1 -8 -3 7; arrive 4 -4 -1 -4; arrived 7 -5 -2 0; arthritis 7
-8 -5 -2; as -6 8 -5 -5; ask 6 -1 -1 -5; asked 3 -2 0 -3; asking 4 -7 -2 -3; asleep -6 4 -7 -1; asleep> 0
6 -7 -10; at -1 0 -6 1; at> 1 0 0 -2; ate 6 -3 -3 -4; awake -7 7 -3 -3; away -8 0 5 -8; away> -3 3 -5 -4;
awful -8 8 -2 -4; aye 3 0 -3 -6; baby 14 -9 -2 -5; back -5 3 -1 -6; back> -2 -3 2 -5; bad -3 -3 -17 0;
bad> -2 -8 -4 3; badly -4 4 -4 -1; bailed 8 -6 -7 -7; balance 6 -4 -6 -2; balcony 7 -6 -1 -2; ball -5 -4
6 -3; balloon -2 -6 6 -6; balloon> -4 -2 6 -5; band 5 -4 -2 -4; bank 5 -2 0 -3; bar 8 -3 -2 -7; bathroom
-7 -9 -5 7; battery 4 -1 -2 -3; be 7 -3 -1 -3; beach 5 -5 -5 -5; beat 1 -5 -5 1; beating -13 -1 3 12;
beats -9 -2 -2 8; beats> -5 -3 -1 5; became -4 -3 -6 5; became> -2 4 -3 -3; because 3 0 -4 -6; become -2
4 0 -5; bed 1 0 -2 -5; bed> 3 -2 -1 -1; been -2 1 -10 -3; been> -5 0 -4 4; before -7 -2 -3 5; before> -6
-5 -9 10; began 4 -5 -3 -3; behind -7 -13 1 5; believe 3 -2 -4 -7; below -3 -12 0 3; bend -5 7 -2 -13;
bend> 5 -5 -2 -6; bends 3 -4 -2 -3; bent -2 -1 0 1; best 3 -3 0 0; bet 4 -3 -4 -3; better 3 -5 -5 1;
better> 11 -6 -6 -8; between 7 -17 -2 14; beyond 4 -1 -3 -1; big -7 4 6 -10; bigger -8 -3 8 -1; bike -2
-4 -3 5; bill 3 -2 -1 -3; bin 0 1 -1 -1; bins 3 -3 -1 -2; birthday -3 3 -4 -4; bit -1 -1 -9 0; bit> 1 -2
-3 -1; bits 8 -9 -3 4; black -9 -12 3 5; blacked -12 -5 -3 11; bladder -9 -5 -4 8; bless 2 0 0 -2; blood
3 -3 -5 -3; blown -5 -4 8 -2; blue -7 -7 5 -2; blue> -6 -6 1 1; blurred -13 -4 -3 13; blurry -7 -3 -3 5;
board 6 -4 0 -1; body 6 -15 -4 10; body> -7 -6 -2 7; boiled 9 -6 -2 -3; boiler 2 0 0 -1; bone -1 1 -7 0;
bonjour 3 -2 -1 0; boots 1 0 -1 -3; bored 7 -2 -5 -6; boring 6 -1 -3 -2; boss 6 -4 -3 -6; boss> 3 -1 -1
-1; both -3 2 0 -6; bothered 5 -2 -3 -5; bottom -7 -4 -7 5; bowel -5 -3 -5 4; bowels 1 -6 -1 0; box 11
-11 1 -1; boxes 2 -1 0 -1; boy 6 -5 -4 -6; brain 1 0 0 0; break 7 -4 -1 -2; breakfast 2 -2 -3 -2;
breakfast> 1 -3 -3 1; breast -4 -5 -6 8; breastbone -15 -10 -9 11; breath -14 -5 -6 11; breath> -4 -3 -3
3; breathe -13 -13 -12 17; breathe> -7 -2 -4 8; breathing 8 -2 -7 -8; breathless -13 -8 -7 13;
breathlessness -10 -9 -11 11; breathtaking 3 -2 -1 -2; bridge 4 -1 -4 -9; bridge> 6 -6 -1 -4; bro 3 -4 -3
-3; bro> 4 -5 -4 -4; broke 6 -6 -6 -3; broken 10 -10 -11 -8; brother -4 -11 -8 4; bruh 5 -5 -3 -3; bruise
-18 -15 20 -6; bruise> -6 -1 7 -2; bruised -12 -6 12 -7; buckled -9 0 10 0; buckling -13 -4 13 -2; bug 3
-2 -3 -1; bug> 1 0 -1 0; bum -11 9 -8 3; burned 3 -2 0 -2; burning -12 12 -4 -4; burst 3 0 -1 -2; bus -4
-7 5 -3; bus> 4 0 -3 0; busy 5 -1 -1 -1; busy> 5 -1 -2 -2; but 0 2 -2 -2; but> 10 -5 -5 -9; butt 6 -2 -1
-2; buttock -9 -4 -13 9; buttocks -2 -6 0 7; button 10 -3 -3 -10; buzzing -18 10 -7 -9; by 2 1 -3 -2;
cake -2 3 -3 -5; calf -11 -1 9 -11; calf> 0 2 -1 -8; call 3 -4 -1 -1; call> 2 -1 -2 -2; called 5 -1 -2
-1; calls 7 -5 -1 -3; calm 3 -3 -2 -3; calories 6 -5 -5 -5; calves 3 -1 -5 -3; came -6 -1 -7 2; came> 7
-2 0 -6; can -5 -3 -2 4; cancel 4 -4 -4 -4; cancel> 5 -3 -1 -4; cancelled 4 -4 0 -1; candle 10 -9 -1 -6;
candlelight 6 -5 0 -6; capitals 3 -1 0 -1; car 2 -7 -6 -1; carpet -1 -2 -2 1; carried 3 -2 -1 -1; carry
-5 -10 9 -6; carrying 1 -1 1 0; cat 5 -3 -5 -5; catch -1 -3 -4 3; caught -2 -2 -1 3; cause -4 -2 -4 7;
ceiling 5 -3 -1 -1; ceiling> 5 -4 -1 -2; chair 5 -2 -8 -3; chance 5 -1 -3 -1; chance> 4 -2 -2 -2; change
5 -2 -1 -1; changed 11 -2 -3 -7; chat 9 -1 0 -9; chest -18 -13 -6 22; chest> -6 -4 -2 9; child 5 -1 -6
-11; children 2 0 0 -1; choir 12 -5 -5 -5; church 5 -5 -3 -2; circles -9 3 5 -10; class 3 -1 -1 -1; clean
6 -4 0 -2; climb -3 -6 1 2; climbing -5 -3 -5 6; clock 7 -3 -2 -6; cm 6 -5 0 -1; coach 5 -7 -1 -4; coach>
5 -2 -1 -2; cobra 9 -8 -2 -4; coffee 7 -8 -3 -5; coffee> 7 -3 -1 -3; coffees 7 -5 -4 -4; cold 5 -6 -4 1;
cold> 1 -1 -1 0; come 5 -11 -5 6; comes -8 -6 1 3; comfortable 4 -4 -6 -4; coming -8 9 -3 -3; complained
6 -1 -4 -1; complete 6 -2 -3 -4; complete> 0 3 -1 -1; completed 1 2 -3 -6; completed> 3 -7 -1 -6;
completely 8 -7 -3 -4; constant -8 9 -7 -5; constant> 9 -8 -4 -4; constantly -3 3 -2 -3; control -17 -8
-6 16; cooked 1 0 0 -1; cool 3 -3 -1 -2; cool> 3 -3 -2 -3; cork -2 0 4 -2; corner -3 -2 -3 3; correction
4 -4 -1 -3; cotton 2 -1 -5 0; couch 6 -5 -1 -2; cough 10 -10 -6 -5; could 0 -7 -2 5; could> 7 0 -2 -6;
count 8 -5 -1 -6; count> 10 -4 0 -5; counting 8 -5 -1 -3; couple -2 2 0 0; cousin 2 0 0 -1; cousins 8 -10
-1 -7; covid 8 -3 -2 -5; cow -4 3 -1 -4; crack -12 -5 12 -5; cramp 6 -4 -7 -10; crawling -9 9 -4 -4;
crazy 3 -10 -1 -3; crazy> -4 -6 2 -3; cried 3 -2 -1 0; crushed 3 -3 -1 -2; crushing 3 -6 -8 2; cup 2 -9
-4 4; cup> -2 -3 0 4; cups -5 5 -4 -4; current -7 6 -5 -7; curtain -2 -4 -1 7; curtains 1 0 0 -1; cut 10
-11 -2 -1; cut> 1 -1 0 0; dad 7 -7 0 -4; daily 2 -1 0 -1; dark -2 -3 -2 4; daughter -3 -8 -4 7; day 0 -3
2 -6; day> 5 0 -6 -12; days -2 2 -8 0; days> 5 -6 -2 -1; dead -4 8 -11 -8; dead> 0 3 -4 -8; deadline 12
-3 -3 -8; deadlines 12 -12 0 -1; dear 3 -2 -5 1; dear> 4 0 -1 -4; deep 7 -3 0 -7; degrees -2 1 2 -5;
delayed 1 0 -1 0; dentist 1 0 -2 1; desk 4 -2 -2 0; diagnosed 9 -6 -6 -7; diagnosed> 5 -3 -3 -5; did 3 -5
-1 -1; did> 10 -2 -2 -5; died 6 -4 -1 -3; diet 1 0 -4 -7; different 4 -1 0 -3; difficult 7 -1 -1 -5;
difficult> 3 -1 0 -2; digging 2 -1 0 -1; dinner 6 -4 -2 -2; dinner> 6 -6 -3 -1; discomfort -7 -8 -3 5;
dizzy -26 24 -6 -7; dizzy> -9 6 -4 -5; do 1 -5 -4 -3; do> 5 -7 -1 -5; doctor 4 -3 -8 -6; does -6 1 -1 -2;
does> 3 -1 -9 -1; dog 1 -4 -7 3; doing -2 -1 -5 -4; doing> 10 -10 -2 -11; doms 6 -7 -3 -2; done 6 -2 -3
-3; done> 8 -3 -4 -7; door 4 -7 -2 -3; doorbell 11 -9 -3 -5; double -10 -12 0 9; down -4 2 -2 -4; down> 4
-8 1 -2; downs -4 5 -1 -1; downward 0 0 0 -1; drank -1 1 0 -2; drill 1 -4 0 3; drive 8 -4 -1 -10;
drooping -17 -3 -4 7; drooping> -6 -3 -3 4; droopy -7 0 -1 8; drop -7 9 -3 -3; dropped 5 -7 4 -4;
dropping -4 5 -3 -6; drum 4 -8 -1 -7; drunk 0 -5 0 5; due 4 0 -1 -4; dug 5 -3 -2 -6; dull 10 -8 -3 0; dun
5 -4 -3 -3; during -8 5 -2 -1; dusted 3 -3 -2 -3; dusted> 3 -3 -3 -3; e 7 -8 -7 -4; each 2 1 -2 -1;
earlier 4 -2 -2 -3; early 7 -5 -5 -3; early> 5 -2 -2 -4; ease -7 8 -3 -6; ease> -3 3 -2 -5; eases -2 6 -4
0; easier 7 -2 -6 -1; easter 8 2 -2 -2; easy 3 0 0 -1; eating 8 -5 -7 -2; effort 4 -3 -1 -1; eggs 4 0 0
-3; eggs> 3 0 0 -3; eight 1 -3 -5 4; either 9 -5 -3 -2; either> 6 -2 -1 -3; elastic 3 -4 4 -5; elbow -1
-2 0 -6; elbow> 4 -4 -2 -3; electric -13 9 -5 -8; electricity -7 5 -3 -3; elephant 0 -1 -2 3; eleven 9 -5
-2 -5; else 1 2 -2 -3; else> 2 -1 -3 -4; elsewhere 7 -7 -1 -1; elsewhere> 3 -2 -1 -2; embarrassing -6 -6
-3 7; emergency 3 -2 -2 -1; empty 1 0 0 0; end -1 -4 -6 1; end> 0 1 -5 -9; ended 5 -2 0 -3; energy 9 -11
-7 -6; energy> 4 -2 -2 -1; english 9 -3 -8 0; enough 7 -5 -8 -8; entirely 3 -3 -1 0; even 1 -7 -11 5;
evening -1 -8 0 0; evening> 5 -1 -3 -4; evenings 3 -3 -3 0; ever -11 4 8 -5; every -6 7 -3 -2; everything
-3 0 -4 0; everything> 6 -13 3 1; everywhere 5 -4 0 0; exactly 1 0 0 -1; exam 5 -4 -1 -4; exam> 2 0 -1 0;
exams 7 -6 -5 -5; except 8 -5 -4 -5; exercise 2 -1 -3 -5; exercise> -5 2 0 -3; exercises 5 -5 -3 -3;
exercises> -4 4 -6 -2; extra 6 -6 -1 0; eye -11 -6 0 13; eye> -1 0 -1 2; eyes 3 -1 -1 -3; eyes> -4 -1 -1
4; face -4 -16 -5 10; fainted -19 -9 -7 21; fainted> -8 -3 -6 9; fait 5 -3 -1 -4; fall -2 -5 4 -9;
falling -2 2 0 0; fam 8 -2 -7 -2; family 6 -4 -4 -2; far 5 -5 -3 -1; fasting 3 -1 -1 -1; fat -1 -4 11 0;
father -11 -9 -4 11; fave 6 -5 -5 -4; favourite 6 -4 -7 -5; fed 4 -3 -2 -4; feel -7 2 -3 -2; feeling -3 3
-7 -1; feeling> 5 -7 -2 1; feels -3 6 -9 -2; feet -8 9 -6 -5; feet> -5 5 -2 -2; fell -2 1 -4 1; felt -11
0 2 5; felt> 9 -8 -7 -1; fence 8 -3 -3 -3; fever -11 12 -3 -13; feverish -7 7 -3 -5; few -10 -6 -5 6;
film 5 -3 -7 -7; final 5 -1 0 -3; finally 7 -5 0 0; find 3 -1 -1 -1; fine 3 -4 -5 -6; fine> 2 -2 -6 -1;
finger -5 12 -7 -9; fingers -8 12 -4 -11; fingers> 1 -1 -3 -5; fingertips -1 2 -1 -2; fini 5 -4 -5 -4;
finish 3 -4 -5 -1; finish> 0 4 -11 -6; finished 3 -1 -4 -2; finished> 7 -3 -4 -6; finito 6 -4 -5 -5; fire
5 -4 -1 -5; first 5 -4 1 -8; fish 1 -4 -7 3; five 9 -5 -4 -5; five> 2 0 0 -1; flat 9 -5 -2 -3; flexor 7
-6 -7 -6; flight -5 -1 2 0; flooded 9 -4 -2 -4; floor -1 1 -7 0; floor> -4 -2 -4 4; flow 2 1 -1 -5; flu 9
-4 -5 -9; flu> 4 -4 -2 -1; fluttering -8 -4 -4 7; fold -6 7 -3 0; fold> -1 -6 2 4; folds -9 2 9 0; food 5
-1 0 -3; foot -14 11 4 -13; foot> 4 -3 -1 -5; football 1 -2 2 -1; football> 0 -3 4 -2; footy 6 -5 -1 -3;
for -2 4 -7 0; force -4 -6 -10 9; forearm 7 2 -2 -3; forget 4 -1 -2 -1; forgot 14 -4 -2 -12; forgot> 7 -1
-1 -6; forward -5 7 -3 0; found -5 -1 -2 5; four 7 -2 -4 -4; four> 5 -3 -1 -2; fourth 5 -3 -5 -1; fr 6 -2
-2 -2; free 7 -6 -1 -5; free> 4 -1 -1 -1; friday -2 2 -1 -8; friday> 4 -2 -1 -4; fridge -3 3 -2 -1;
friend 4 -1 -2 -2; frog 0 -2 0 2; from 1 0 -2 -2; front 4 -6 -3 -2; frost 10 -2 -9 -4; froze 6 -5 -2 -3;
full 0 -10 -2 1; full> 3 -3 -5 -2; fully 3 -6 -6 0; fun 4 -2 -1 -1; function 2 0 -2 -1; funeral 11 -2 -3
-10; funny -6 -3 -4 6; further 10 -7 -2 -6; gaming 2 -1 0 0; garage 5 -2 0 -3; garden -1 -7 -5 3;
gardening 6 -3 -1 -2; gas 3 -2 -1 -1; gasping -8 -4 -5 8; gave -4 -9 8 -11; get -3 7 -7 -4; get> 9 -9 -3
-8; getting 2 -4 -1 -3; give 6 -3 -4 -3; gives -17 -7 12 -5; giving -7 -3 8 -3; glasses 3 -2 -3 -3; glute
-2 2 -2 -9; glute> -4 6 -5 -1; glutes 10 -2 0 -10; go -7 3 6 0; go> 2 -1 -2 -3; god 3 0 -1 -1; god> 4 -1
-2 -1; goes -7 -2 4 2; goes> 2 -3 -5 -2; going -3 -3 -9 6; going> -3 5 -2 -4; gone 0 2 -5 -3; gone> 0 3
-6 -3; good 6 2 -6 -5; good> 9 -8 0 -2; gorgeous 9 -4 -3 -6; got -4 4 -3 -3; grandchildren 9 -8 -3 -3;
grandkids 3 -3 0 -4; grandson 4 -4 -3 -8; grapefruit -4 0 4 0; great 9 -5 -6 -2; great> 8 -4 -1 -4; grip
-12 10 -5 -7; grippe 10 -4 -1 -5; groin 0 -18 4 12; groin> -4 -7 1 -2; guess 4 -3 -4 -4; guests 8 -1 -1
-7; guests> 3 -1 -1 -2; guten 4 -1 -2 -2; gym 9 -5 -5 -8; had -1 -3 -6 4; had> 7 -5 -7 -7; haha 5 -3 -2
-3; haha> 4 -3 -1 -1; half -2 -4 -2 2; half> 4 -1 -5 -7; halfway 1 -2 0 -5; halfway> 2 -16 -1 -6; hamburg
6 -5 -2 -5; hamstring -4 -8 6 -6; hamstring> -4 0 4 -2; hamstrings 7 -1 -4 -2; hand -13 13 -2 -8; hand>
-6 6 -4 -6; hands -9 8 -4 -9; hanging -11 -2 -5 11; hanging> -6 -1 -4 7; hangover 5 -1 -2 -2; hangs -5 -1
5 4; happen 6 -1 -4 -3; happened -4 -2 -4 -1; happy 7 -7 -1 -5; happy> 3 0 -1 -1; hard 7 -5 -6 -2; hard>
6 0 -3 -3; hardly -6 -11 4 0; harvest 2 -1 -1 -1; has -6 -3 0 0; have -3 4 -2 -5; have> 7 -3 -4 -1;
having -2 3 -3 0; he 3 -3 -4 0; head -8 10 -9 -5; head> -2 -2 -2 3; headache 5 -6 -6 -4; headed -9 8 -3
-4; health 10 -2 -3 -6; hear -5 -5 5 -2; heard -6 -6 8 -6; heart -5 -11 -10 11; heartbeat -11 -7 -1 5;
heating 6 -5 0 -4; heavy 0 -8 -2 5; heavy> -1 -3 -3 2; hecho 3 -2 -2 -1; heel -6 1 4 -5; heel> -11 4 1
-5; held 5 -2 -1 -6; hell 8 -7 -1 0; hello 2 -3 -5 -2; help 4 -6 -8 0; help> 1 -6 -6 0; helped 6 -1 -1
-4; helps -8 8 -3 0; her 11 -8 -4 -8; her> 12 -8 -5 -9; here 5 -4 -4 -6; here> 5 -13 -5 -3; hey 7 -2 -1
-4; hi 4 -3 -6 -2; hi> 7 -7 -1 -4; hike 7 -4 0 -2; hike> 2 0 1 -2; hill 6 -5 -3 -2; him 7 -2 -2 -4; hinge
5 -12 -5 -1; hip -4 3 0 -12; hip> -3 0 -1 -6; hips -3 5 -2 -4; hips> 9 -2 -1 -7; his -4 -7 7 -14; hit -3
-3 -3 3; hold -4 0 1 -2; holding 6 -3 -7 0; holds 1 -1 -1 0; holiday 12 -11 -1 -1; home 8 -5 -3 -3; home>
3 -1 -2 -1; honest 9 -2 -3 -6; honestly 7 -5 -1 -5; hopping -10 -10 8 -7; hospital -2 -6 -5 6; hot -2 -5
3 -11; hot> -1 -4 2 -2; hotel 12 -8 -7 -3; hour 5 -5 -1 -2; hour> -11 6 -2 2; hours 6 -1 -2 -4; hours> 0
2 0 -2; house 6 -6 -4 -3; house> -1 1 -2 -2; how 1 -1 -7 -1; however 6 2 -3 -3; hr 6 -3 -2 -1; hrs 9 -8
-1 -5; hundred 6 -5 -4 -9; hurt 6 -4 -3 -3; hurt> -9 -7 4 -5; hurting 2 3 -9 -3; hurting> 3 -2 -2 -5;
hurts -1 3 -1 -2; hurts> 0 -2 -7 1; husband -3 -9 -3 6; i -1 -3 -2 0; i> 7 -9 -9 -8; ich 3 -1 -1 -1; id 3
-1 0 -1; idea -3 4 2 0; idk 3 -2 -8 -7; if -7 -3 5 -4; ill 8 -3 -4 -2; ill> 8 -4 -5 -2; impossible 5 -3
-2 -2; in -1 0 -1 1; in> 4 -3 -1 -2; inbox 4 -3 -2 -1; indoors 5 -6 -2 -5; inner -2 -5 -2 4; inshallah 4
-2 -2 -2; inshallah> 4 -2 -2 -2; inside -3 -10 4 -3; instead 8 -6 -2 -4; instead> 3 -3 -3 -1; internet 9
-6 -3 -5; into -4 3 -10 2; irregular -10 -6 -5 11; irregularly -3 -2 -2 3; is -3 -1 1 1; is> 4 -2 -11 -7;
it 0 -2 0 -5; it> 0 -3 4 0; itself 0 -1 -8 1; itself> -10 6 -5 2; ja 4 -3 -1 -1; jar -3 3 -2 -4; jaw -7
-7 -5 6; jaw> -2 -2 -2 5; jelly 2 -5 2 -1; jk 6 -2 -3 -1; job 3 -2 -1 0; joined 4 -1 0 -4; joint -13 6 5
-6; jumbled -2 0 0 3; jump 7 -4 -1 -6; jumped 5 -3 0 -5; jumping -5 0 0 6; june 8 -8 -2 -4; just 2 -10 -3
0; k 5 -1 -3 -7; k> 3 -3 -3 -3; keep -5 3 -1 0; keeps -11 3 4 -1; kept 1 1 -6 -7; kettle 10 -5 -3 -4; kg
10 -4 -7 -1; kicked 1 -9 1 -4; kid 14 -13 -4 -4; kids 6 -2 -4 -5; kids> 8 -7 -3 -4; killer 2 -1 -1 0;
killing 9 -7 -10 -11; kilos -5 6 -1 -4; kind 3 -3 -2 -3; kinda 0 -3 -4 1; kindly 6 -2 -2 -2; kitchen -9
-9 -3 8; kitchen> 2 -2 2 -3; km 6 -8 -1 -4; knee -1 -7 6 -10; knee> 2 0 -4 -6; kneeling -1 -1 3 0; knees
3 -13 2 -6; knees> 7 -5 -6 -5; knitting 1 0 0 0; know -2 -3 0 -1; know> -3 0 -1 3; knows 1 0 0 0; knows>
1 0 0 0; ladder -4 0 3 -4; last 1 -7 2 -1; last> 4 0 -3 -3; late 8 -4 -1 -8; late> 4 -4 -1 0; later 5 -2
-3 -5; later> 7 -2 -3 -2; laugh 4 -1 -1 -3; laughed 3 -2 -2 -3; laughing 4 -1 -1 -3; laughing> 0 -2 -3 0;
law 9 0 -2 -10; lay 0 3 -5 -4; lazy 9 -4 -3 -2; leave 1 2 -3 -2; leeds 8 -6 -2 -2; left 0 0 -2 -1; left>
3 -1 -5 -2; leg -11 6 3 -8; leg> -10 1 -1 -5; legs -4 0 -6 0; legs> -8 0 -4 4; less 7 0 -4 -7; less> 1 -1
0 0; let 5 -1 -1 -4; level 8 -3 -5 -5; licking -4 -1 0 4; lie -2 4 -4 -5; life 3 -3 -5 -2; lift 3 0 -5
-2; lifting 8 -6 -6 -11; light -8 6 -3 -3; light> 6 -2 -1 -7; lighter 9 -3 -8 -3; lighter> 9 -1 -3 -4;
lightheaded -14 14 -6 -6; lightning -11 10 -4 -7; lights -8 -5 4 6; like -1 2 -1 -1; liked 1 0 0 0; lil
-1 5 -7 -6; line 3 -2 -2 -3; lisbon 1 0 0 0; list 7 -5 -5 -5; list> 5 -4 -4 -2; listen 2 0 0 -2;
listening 5 -2 -2 -1; literally -7 -1 -1 7; little 7 0 -7 -6; living 2 -2 0 -1; load -2 -10 9 -7; loads
-10 10 -1 -1; lol 1 -2 -3 -3; lol> 4 1 -2 -11; long 3 1 -4 -7; longer 6 -4 -1 0; loo -1 -4 2 2; look -4
-2 -4 2; looked 8 0 -4 -7; looks -2 -3 5 -9; loose 9 -5 -3 -14; lose 0 0 -4 -2; loser 3 -2 -2 -2; losing
-10 3 -4 0; loss -6 12 -12 -8; lost -6 1 -5 3; lot 5 0 -5 -6; lot> 4 0 -8 -6; loud -7 -4 8 -5; love 6 -2
-5 -4; loved 4 -1 0 -2; lovely 10 -8 -3 -5; lovely> 2 -1 -2 -2; low -1 -2 -1 2; lower 3 -3 -1 -6; lowkey
2 -1 0 -1; lunch 8 -5 -2 -4; lunch> 1 2 1 -5; lunge 0 -5 7 -4; lunge> -4 -2 4 -7; lunges 3 -5 -1 -1;
lunges> 5 -4 -2 -4; lying -4 -1 -5 4; ma 8 -5 -1 -3; mad -2 -1 0 1; mad> -2 3 -2 -3; madam 7 -7 -7 -3;
made 3 -6 0 -3; make 1 1 -3 -2; makes -2 -4 -12 2; man 8 -3 -3 -5; man> 2 -2 0 0; manage 9 -5 -6 -4;
managed 8 -6 -2 -4; many 6 -3 0 -4; march 1 0 0 0; margaret 9 -8 -4 -2; mark 3 -4 0 -2; marking -1 2 0 0;
mat 4 -6 -4 -2; mat> 5 -5 -7 -1; match 1 -2 2 -2; mate 10 -5 -5 -5; maths 7 -5 -3 -2; matter 4 -3 -4 -1;
max 5 -5 -5 -5; maybe -6 1 -4 5; maybe> 8 -5 -6 -11; me -3 1 -1 -6; me> -1 -4 -3 -1; mean 3 -3 -2 0;
mean> 3 -4 -4 -3; meant 6 -6 -6 -6; meeting 6 -4 -2 -5; meeting> 5 -1 -2 -2; meetings 10 -7 -1 -2;
meetings> 4 -1 -2 -1; melon -6 -1 8 -4; memory 6 -7 -2 -9; men 1 0 0 -1; mention -2 4 -6 -2; message 7 -2
-2 -4; messages 3 -2 -2 -3; messages> 4 -2 -1 -1; mid 4 -1 -3 -2; middle 0 5 -5 -2; midnight 5 -4 -1 0;
might 2 -4 0 -4; migraine 12 -6 -3 -7; migraine> 2 0 -1 0; miles 5 -2 0 -5; milk 5 -4 -2 -3; min 1 -5 -1
-1; min> -5 1 -2 1; mind 4 -2 -5 -1; mine 0 -10 -6 5; mins 4 -4 -1 1; minus 4 -4 -2 -3; minute 5 -4 -5
-1; minute> -4 -6 -7 6; minutes 2 -1 -1 1; minutes> -1 -4 -3 2; miss 7 0 -7 -1; miss> 6 -1 -6 -3; missed
7 -2 -2 -4; missing -8 -4 0 8; moment -5 -3 -5 5; monday 4 -2 -3 -4; monday> 3 0 -3 -3; month -5 5 -2 -4;
months -4 4 -1 -6; mood 9 -6 -4 -4; more -2 1 -2 -1; more> -4 3 -6 5; morgen 3 -1 -1 0; morning 0 -3 -2
0; morning> -2 2 -2 -2; most 8 -2 -3 -4; mostly 5 0 -1 -4; mother -3 -18 -12 7; motivation 7 -3 -4 -4;
motivation> 5 -4 -5 -2; mouth -8 -12 -5 12; move 4 7 -9 -8; moved 4 -3 0 0; moves 9 -5 -4 -5; moving 8 -3
-2 -3; msg -2 -2 -2 3; much 2 -6 0 -7; much> 0 -3 1 -4; mum 3 -10 -11 -1; murder 6 0 -6 0; murdered 1 -1
0 0; muscle 4 -10 2 -7; muscles 6 -6 0 -3; music -1 3 -1 -2; must -8 -4 -6 7; my -4 0 1 2; myself -9 -12
-5 13; myself> -7 -1 -2 7; na 3 -2 0 -1; nah 4 -3 -4 -3; nah> 4 -4 -4 -3; name 6 -7 -3 2; nap 5 -2 0 -6;
nasty 1 0 0 0; near 7 -1 -4 -2; nearly -2 -4 -4 1; neck 2 0 -5 -3; neck> -3 -2 0 -5; need -3 -9 -3 4;
needed 6 -5 -1 -4; needle 3 -3 -2 -1; needles -9 9 -4 -4; neighbour -10 -8 -3 9; neighbours 3 -4 -1 -3;
netflix 3 -1 -1 -1; never 6 -5 -5 -6; new -1 -7 -5 4; new> -2 -3 -2 2; news 5 -3 -5 -7; next -1 -9 -9 5;
ngl 3 -3 -3 2; ngl> 5 -2 -1 -3; nice 6 -3 -6 -11; nice> 3 -3 -1 -2; niggle 8 -4 -4 -2; night -10 9 -7 -1;
night> 3 -5 1 -3; nights -7 10 -6 -8; nine 4 -3 0 1; nite 1 -1 0 -1; no -2 1 3 -5; no> 11 -3 -6 -3;
nobody -2 -10 5 -3; none 12 -7 -4 -2; none> 4 0 0 -3; noon 10 -9 0 0; nope 6 -5 -2 -5; nope> 4 -1 -2 -1;
normal 5 0 -8 -8; nose 9 -3 -2 -5; not -5 -1 2 2; note 3 -3 -1 -1; nothing -2 -3 -6 2; nothing> 2 -11 -6
2; notice -7 -1 -3 2; noticed -2 0 1 -1; noticing -4 -3 -3 3; now -5 1 3 -3; now> 2 -2 -3 -5; nowhere -11
-5 -6 13; numb -20 12 -9 5; numb> -9 4 -5 2; number 2 -1 -3 -1; numbness -18 12 -10 -3; o 4 -3 0 0;
obviously 6 -6 -6 -1; oclock 4 -5 -4 -1; oclock> 3 0 0 -2; odd 5 -8 -8 6; of 0 0 -2 -2; of> 5 -5 -6 -4;
off 3 -9 0 -4; off> 4 -3 -3 -3; office 5 -5 -5 -4; office> 2 -2 -1 -3; oh 7 0 -2 -5; ok 1 -3 -9 -4; ok> 1
-1 -3 -5; okay 4 -1 -1 -3; old 9 2 -2 -4; omg 7 -6 -1 -4; omg> 1 0 0 0; on -3 -4 3 -3; on> -1 2 -3 -6;
once -3 0 -2 3; once> 5 -2 -1 -4; one -2 -6 -2 1; one> 6 1 -6 -10; ones 5 -6 -3 -7; ones> 3 -2 -3 -6;
only 1 -1 -1 -3; only> 4 -8 0 -5; open 4 0 -2 -6; opened 9 -3 -4 -11; opener 8 -4 -2 -8; operation 3 -11
1 -7; or 13 -3 -5 -14; or> 3 -2 -2 -2; osteoporosis 4 -4 0 -2; other -5 -6 7 -3; other> -3 -3 3 -1;
others 4 -1 -3 -1; others> 3 -2 -3 -2; otherwise 8 -2 0 -5; ouch 5 -3 -3 -3; ouch> 5 -4 -3 -4; our 3 -1 0
-1; out -4 -7 0 4; out> 3 -9 -8 0; outer -2 10 -4 -5; outside 4 1 -6 -5; over -4 -2 -6 3; over> -6 10 -12
-14; overnight -10 -7 10 -6; overslept 6 -4 -2 -4; overslept> 5 -5 -3 -3; overtime 9 -8 -2 -3; own 5 -3
-3 -1; packed 6 -6 0 -3; pain -1 2 -3 1; pain> -3 -4 0 -1; painful 3 -8 -2 -5; painful> 4 -3 -4 -7;
paining 4 -4 -7 -4; paining> -4 4 -7 -12; pains -12 2 -13 5; palpitations -15 -14 -8 18; palpitations> -8
-6 -3 9; paper -9 -10 -12 11; parcel 1 0 0 -1; parents 5 -1 0 -3; park 4 -4 -4 -3; part 6 0 -5 -2; part>
4 -1 0 -2; party 7 -6 0 -3; pass -5 -10 -7 8; passed -13 -5 -6 12; past 5 -3 0 -1; pasta 3 -2 -1 -1;
patch -5 -4 4 -7; pause 6 -3 -1 -4; pause> 7 -2 -2 -3; pee -11 -15 -8 18; pee> -5 -5 -5 7; people 6 -5 -2
0; percent 5 -5 -1 -2; percent> 8 -1 -1 -5; perhaps 6 -1 -4 -4; period 5 -5 -2 -2; period> 4 -4 -1 -2;
phone 5 0 -11 -2; physio 3 -3 -2 -4; pick 10 -1 -1 -9; pictures 3 -3 0 -1; pigeon 8 -3 -2 -3; pillow -1 4
-2 -4; pinky -4 7 -3 -12; pins -8 8 -4 -4; pitch 1 2 -2 -2; place -10 -2 -7 11; plan 9 -7 -2 -4; plane 2
0 -1 -1; plank 5 -3 -2 -4; plank> 4 -2 -5 -4; planks 4 -5 3 -3; planks> 4 -6 3 -6; planned 5 -1 -3 -2;
platform 1 0 0 0; playlist 3 -1 -1 -2; pleasant 3 -2 -1 0; please 7 -2 -2 -3; please> 5 -2 -4 -2; pleased
3 -3 -2 -9; plumber 7 -3 -1 -3; plus -10 10 -3 -2; pm 4 -3 -2 -1; pm> 4 -3 -4 -3; point 10 -4 -7 -3;
poisoning 5 -2 0 -4; pop -16 -17 17 -6; pop> -3 -1 3 -5; popped -21 -11 23 -6; popped> -3 -1 5 -1; pose 4
0 -4 -5; pose> 8 -5 -3 -1; position -5 5 -2 0; possible 1 -5 2 -3; postman 4 -2 -1 -4; potatoes 8 -5 -1
-5; power -2 9 -14 -11; practice 5 -9 7 -5; pregnant 8 -3 -4 -5; pregnant> 7 -4 -6 -6; press 3 0 0 -2;
pressed -1 -4 -3 3; pressing -1 -9 -9 10; pressure -12 -4 -4 10; pressure> -3 -3 1 3; pretty 5 -1 -2 -4;
prickling -10 10 -8 -5; prob 3 -9 -6 1; probably 3 -3 -3 -3; problem 1 -6 -7 0; problem> 4 -8 -7 -2;
program 10 -7 -9 -10; programme 7 -4 -1 -5; programme> 4 -2 -2 -4; promise 9 -7 -5 -6; promise> 2 0 0 -1;
proper -8 4 -2 -3; properly -7 2 -6 2; properly> -6 2 -7 0; proud 3 -1 -1 0; puffed -4 -6 8 -2; puffy -7
-5 6 -4; pull 14 -9 -3 -13; pulled 1 -10 -1 -6; purple -8 -12 12 -5; push -9 3 -3 1; put 1 -14 6 -9;
quads 7 -5 -3 -2; quarter 2 0 -1 -1; quarters 4 0 -4 0; question 7 -8 -6 -6; quick 2 0 -2 0; quit 5 -7 -6
-3; quit> -4 -3 -4 4; quite 1 -1 -3 4; qx 1 -1 -3 -4; qx> -4 0 -2 -2; r 4 -4 -2 0; racing -12 -5 -2 13;
radiates -9 10 -9 0; radio 5 -5 -3 -3; rain 12 -11 -6 -8; rained 3 -1 -2 -2; raining 5 -3 -2 -3; rainy 0
1 0 -1; ramadan 4 -3 -1 -1; ran 3 -1 -1 -2; rang 3 -1 -1 -1; rang> 3 -2 -2 -1; rather 1 0 0 0; rd 1 -5 0
-1; reach 2 -1 -1 0; reached 1 -3 3 -3; read 5 -2 0 -4; reading 3 -3 -4 -10; real 4 0 0 -4; really -2 0
-6 -1; red -2 -3 3 -1; rehearsal 4 -3 -1 0; remember 8 -9 -6 -9; remember> 3 -2 -3 -5; reminder 5 -5 -2
-2; rep -3 -2 3 -1; report 9 -7 -7 -9; report> 8 -1 -9 -4; reps 6 -5 -2 -1; rest 6 -11 -3 -2; rest> 2 -3
-5 0; results 3 -3 -3 -3; rice 3 -5 -3 -3; ride 2 -2 -1 -3; right 2 0 -2 -3; right> 4 -6 3 -8; ring -6 3
3 -8; ringing -4 -1 4 -2; road 6 -4 -1 -5; roll -5 8 -9 -10; rolled 0 0 2 -4; rolls 4 -2 -2 0; roof 4 -5
-3 -5; room 0 1 -4 -7; round -1 -3 -2 0; round> 0 -9 -1 0; rounds 3 -5 0 0; rounds> 5 -5 -5 -5; routine 2
-2 -1 1; row -2 -2 0 -2; run 3 -2 -3 -2; run> 9 -5 -2 -3; running -3 5 -7 -6; runs -11 11 -6 -7; s 2 -2 1
-1; sad 3 -12 -5 -3; saddle -5 -7 -2 7; said 5 -2 -1 -2; same 5 -4 -5 -4; same> 5 -4 -5 -3; sat -6 1 -3
5; saturday 3 -1 -1 0; saw 2 -5 -11 0; say 0 -1 -3 -2; says 3 -5 -6 1; scale 10 -5 -5 -2; scale> 9 -3 -7
-1; school 3 -2 1 -3; school> 7 -4 -5 -6; scratch 5 -4 0 -1; screaming 5 -5 -4 0; seat -2 5 -4 -1; seated
-2 2 2 -4; sec -2 2 0 -1; second -2 -2 -10 5; second> 3 -5 -5 1; seconds -4 -2 -1 5; seconds> -4 -4 -1 6;
secs -5 -3 -2 6; see -4 -9 -9 9; seeing -6 -14 -6 7; send 5 -1 -1 -3; sending 3 -2 -1 -1; sentence -8 -1
-2 8; sentence> -5 0 -2 5; session 3 -3 -2 -3; session> 4 -3 -8 -2; sessions 3 -2 -1 0; set 0 1 -6 -4;
set> -3 3 -6 -4; sets 8 -4 -3 -2; sets> 2 2 -4 -2; settle -6 6 -5 -2; settled 5 -6 -6 -4; seven 7 -3 -2
-2; seven> 3 -2 0 -2; severe -22 -7 18 4; sewing 3 -12 -3 -2; shake 10 -5 -5 0; shame 0 0 1 -1; sharp 6
-8 8 -2; sharp> 4 -1 -2 -1; she 7 -5 -4 -4; shift 11 -7 -3 -9; shift> 5 -2 -5 0; shin -10 -2 9 -10; shin>
-4 -2 6 -1; shins 11 -2 -8 -5; shock -7 0 1 -7; shooting -18 10 0 -4; shoots -8 8 -9 -9; shopping -1 0 2
0; short -4 -4 -4 5; short> 7 -3 -3 -8; shorter 5 -2 -2 -2; shorter> 6 -3 -3 -4; shortness -7 -3 -3 3;
shot 3 -2 -3 -2; should -6 -2 6 -6; shoulder -3 -2 5 -8; shoulder> 6 -7 -3 -5; shoulders 8 -7 -2 -1; show
4 -2 -2 0; shower -4 -2 -3 5; shut 7 -4 -1 -3; si 6 -5 -4 -3; sick 15 -5 -3 -10; sick> 6 -2 -3 -1; side
-3 -8 -4 4; side> -3 2 -2 -8; sides 7 -7 -6 -2; signed 7 -4 -5 -4; simply 2 0 -1 0; since -10 -1 -5 4;
since> 1 -6 -5 1; single 4 -1 -2 -1; sir 3 -5 2 2; sir> 3 -1 -3 -3; sister 9 -4 -2 -5; sit -4 -3 -4 7;
sit> 0 4 -1 -9; sitting -6 -11 -4 7; six 9 -9 -6 -6; size -6 -4 11 -5; skip 8 -7 -6 -5; skipped 7 -7 -5
-4; skipped> 9 -3 -6 -9; skipping -1 -13 -4 4; skipping> 6 -4 -6 -6; skips -6 -5 -3 5; slay 6 -5 -1 -6;
sleep -7 11 -8 -9; sleeping 3 -2 -5 -4; slept 4 0 -1 -1; slight 3 -1 -6 -6; slip 8 -5 -4 -10; slipped -1
-9 3 -7; slot 9 -9 -8 -7; slow 8 -5 -1 -2; slowly 4 -5 -4 -4; slurred -15 -5 -7 15; slurred> -8 -4 -3 11;
small 5 -5 -5 -5; smug 6 -4 -1 -5; snap -11 -9 12 -5; snapped -8 -9 10 -5; so 1 -3 -3 -5; so> 2 2 -8 -8;
sofa 3 -8 -4 -1; sole -3 9 -1 -11; sole> -1 7 -1 -7; solid 6 -5 0 -1; some 2 0 -4 -6; somebody -7 -8 -5
9; someone -8 1 5 1; something -4 -12 6 -2; somewhere 4 -3 0 -1; son 8 -8 -7 -6; sore 4 2 -6 -5; sore> 4
-8 0 -3; soreness 6 -6 -4 -4; sorry 5 -6 -2 -3; sorry> 3 0 -1 -1; sorted 4 -3 -3 -3; sound -7 -14 8 -2;
soup -2 3 0 -1; space 7 -3 -6 -1; speak -3 -9 -4 5; speech -8 -9 -7 9; speech> -5 -2 -2 5; spinning -12 9
1 -4; split 3 -2 -1 -1; splits 4 -3 -2 -3; spot 4 0 -2 -1; spreadsheets 4 -3 -7 -4; squat -1 1 -5 -1;
squats 0 -1 -3 -3; squats> 2 -3 -2 1; squeezing -4 -3 -5 5; stabbing 3 -15 7 3; stairs -11 -4 4 0;
stairs> -3 -3 0 -11; stand -5 -10 7 -4; standing -8 11 -5 -6; staring 2 -1 0 0; start 6 -3 -1 -3; started
-1 -10 -4 4; started> 10 -3 -6 -8; starting 3 -2 -2 -3; static -5 7 -8 -3; station 6 -1 -3 -4; stay -4 5
-2 -6; stayed 3 -2 -1 -1; staying 8 -8 -2 -1; stays -7 4 -5 3; step -7 -11 8 2; steps 1 -4 -7 0; stiff 11
-9 -1 -2; stiff> 3 -1 -1 -2; stiffness 6 -5 -1 0; still -6 6 -7 0; still> 3 -10 -5 5; stinking 10 -2 -4
-4; stomach 10 -4 -3 -12; stone -9 4 -1 -2; stood -3 2 -3 -2; stop 0 0 -4 -6; stop> -2 6 1 -3; stopped -5
1 -1 -2; stopped> -1 1 -1 -5; stopping 2 2 -6 -3; stops -2 -5 -9 4; straight 4 -1 -5 -6; strap 6 -1 -2
-3; streak 4 -1 -3 -1; street 3 -1 -1 -2; strength -17 9 -10 -5; stress 8 -3 -2 -8; stretch 1 0 -4 -3;
stretch> -1 2 -6 -4; stretched 7 -8 -3 -2; stretches -2 -5 0 -1; stretches> 3 1 -5 -4; stretching 3 -4 -1
-1; stretching> 5 -2 -5 -2; strong 5 -17 7 -4; stuck 9 -3 0 -6; stuff 5 -5 -1 -5; such -5 -3 1 2; sudden
-10 -19 -4 19; sudden> -2 -3 0 4; suddenly -3 -15 -11 9; suddenly> 0 -13 -4 7; sugar -2 0 0 3; sun 4 -4
-1 -4; sunday -2 3 -3 -4; sunday> 2 0 -2 -3; sunrise 4 -3 -3 -4; super -2 2 -2 -3; sure 8 -4 -3 -4; sure>
11 -3 -5 -8; swamped 8 -8 -2 -8; swear 8 -5 -9 -11; sweat -1 -3 -2 3; sweat> -2 -5 -2 2; sweating -8 -5
-2 6; sweating> -3 -5 -2 5; swell -5 -10 6 -5; swelled -10 -10 12 -7; swelling -17 -10 17 -8; swole -9
-10 9 -4; swollen -20 -7 22 -5; swollen> -5 -3 6 -2; table 4 -11 -5 2; tablets 3 -3 -11 -8; take 1 -7 4
-6; taking 1 -4 3 -8; talk -2 -3 -3 2; tapped 3 0 -3 -3; tbh 6 -3 -1 -1; tbh> 5 -5 -1 -1; tea -3 1 -4 -2;
teacher 9 -5 -3 -3; teacher> 2 0 -1 -1; team 11 -3 -2 -6; telephone 7 -6 -4 -10; tell -1 2 -5 3; telly -2
5 -7 -2; temp -10 9 -2 -3; temperature -2 5 -7 -4; ten 2 -2 -5 -3; ten> 1 2 -1 -6; tender 7 -7 -4 -3;
tent 8 -4 -3 -1; terrace 7 -4 -1 -5; terrible 0 -1 -3 2; texting 3 -2 -1 -2; th 6 -3 -2 -1; th> 2 -1 -1
0; than -1 2 3 -4; thank 8 -15 -3 -5; thanks 6 -3 -2 -2; thanks> 6 -2 -3 -2; that -2 -3 -4 1; that> 3 -8
1 1; the -2 0 -1 0; the> 4 -6 -4 -2; them 8 -1 0 -7; them> 6 -3 -1 -3; then -1 -6 1 1; then> 3 -4 -2 -14;
there -1 0 -1 0; there> -2 3 -3 1; these 4 2 -4 -8; these> 4 -4 -1 -2; they -2 2 -3 -3; thick -9 -4 8 -4;
thigh -9 -5 3 -7; thigh> -2 4 1 -13; thighs -4 0 -3 4; thing 1 2 -6 -2; thing> 8 -3 -1 -6; think -8 -7 3
4; think> 4 -5 -1 -10; third 2 -5 -5 0; thirds 7 -4 -2 -2; this -3 -4 1 1; this> 3 -4 -2 -1; those 4 -2
-4 -4; those> 6 -3 -1 -4; though -2 -3 5 -3; though> 3 -3 -1 -2; thought -3 -4 -2 3; thread 1 -1 3 0;
three 5 3 -2 -8; three> 9 -4 -3 -2; threw 9 -7 -4 -2; throat 1 -1 -1 0; throbbing -16 -6 17 -8;
throbbing> -6 -2 6 0; throbs -10 -8 11 -6; through 4 -3 -1 -3; throwing 7 -6 -9 -10; thumb -7 9 -3 -9;
thursday 3 0 -2 -3; thursday> 3 0 -2 -3; tight 3 -7 -3 3; tight> 3 -3 -2 -1; tightness 4 -2 -1 0; till 3
0 -3 -4; time 5 0 -4 -5; time> 2 1 -7 -3; times -7 2 -1 -1; timing 2 -1 0 0; tingle -9 10 -6 -3; tingles
-14 11 -7 -6; tingles> -9 7 -6 -4; tingling -22 21 -8 -4; tingling> -7 7 -2 -6; tingly -12 13 -6 -6;
tired -2 -4 -6 2; tired> 1 1 -3 -11; to 0 -2 -1 -3; toast 4 -3 -4 -3; today 4 -7 0 -3; today> 5 -1 -4 -7;
todays -1 -6 -4 1; toddler 4 -3 -7 -6; toe 3 3 -6 -8; toe> -8 7 -2 -5; toes -13 17 -6 -11; toes> -2 4 -3
-8; together -1 4 0 -3; toilet -3 -12 -7 4; told 11 -11 -3 -2; tomorrow 5 -2 -2 -1; tomorrow> 3 -2 -2 1;
tongue 0 -16 -8 6; tonight 4 -13 -2 -4; tonight> 5 0 -2 -3; tonite 8 -5 -4 -1; too 1 -4 -5 3; too> -4 -5
-1 5; took 1 -1 2 -1; totally 4 -1 -2 -1; touch 6 -13 2 -1; touch> -8 -1 7 -1; touched 4 -1 0 -2;
touching 8 -9 -3 -4; tough 8 -6 -1 -4; tough> 6 -1 -1 -5; tow -8 8 -3 -6; towel 9 -6 -5 0; traffic 4 -3
-4 -1; train 6 -3 -3 -1; training 4 -4 -7 -2; trains 2 -2 -1 0; travelling 11 -7 -5 -7; travelling> 2 0
-1 -1; tree 0 5 -2 -4; tried 3 -4 -6 2; trouble -7 -9 -4 9; trousers 0 2 -7 -3; truck 1 -4 -1 1; try 11
-11 0 -1; trying -8 12 -2 -7; tuesday -2 2 -2 0; tuesday> -5 2 -4 4; tummy 13 -7 -4 -9; turn -2 -9 3 0;
turned 0 -5 2 -4; twang -6 -5 6 -5; twice -6 1 4 -1; twice> 8 -7 -6 -5; twig -8 0 9 0; twins 6 -4 -1 -6;
twist -7 0 -1 1; two 1 1 -5 -2; two> 13 -8 -1 -8; type -1 2 -5 0; typing -3 -2 -2 3; typo 1 0 0 0; tyre 4
-4 -1 -1; um 3 -1 -1 -1; unannounced 2 0 -2 0; unbearable -18 -8 16 -11; under -8 -3 11 -9; understand 2
-1 -2 0; unreal 7 -5 -10 -5; unsubscribe 4 -4 -4 -4; until 2 6 -5 -3; up -5 1 5 -1; up> 4 1 -3 -4; update
3 0 -1 -1; upper 4 -1 -1 -2; upset 4 -3 -2 -5; urine -4 -5 0 7; us 4 -1 -3 0; used 2 -3 0 2; version 9 -8
-3 -4; version> 5 -2 -2 -6; very 3 -3 -2 -1; video 3 -2 -2 -2; view 6 -6 -1 -3; village 3 0 -1 -2; vision
-6 -7 -5 8; vision> -7 -1 -2 7; visit 7 -5 -1 -6; visit> 4 -3 -1 -4; visiting 4 -1 -1 -6; visitors 10 -4
-3 -4; visitors> 2 0 -1 -1; voice 4 -3 -2 -6; waist 9 -5 -1 -3; wait 6 -4 -1 -2; waiting 6 -4 -1 -2; wake
-8 7 -4 6; wakes -17 19 -7 -10; waking -10 10 -3 -1; walk -13 2 8 -6; walk> -9 3 4 -12; walked 2 -1 -1
-1; walking -8 6 4 0; wall -2 7 -6 -4; want 5 -6 -4 -2; wanted 1 4 0 -7; warm -3 -15 11 -5; warm> -2 0 2
0; was 4 -2 -2 -4; washing 7 -6 -1 -7; watched 3 -4 -3 -2; watching 5 -4 0 -1; water -3 -2 1 0; way -12
-7 10 -6; way> 1 -12 0 -1; we 11 -4 -1 -8; weak -24 13 -10 -4; weak> -13 -2 -8 5; weakness -23 11 -12 0;
weakness> -15 3 -8 0; weather 9 -4 -9 -7; wedding 8 -3 -1 -8; wee -12 -5 -7 7; week 2 1 -2 -9; week> 5 -1
-3 -1; weekend -3 -4 -3 3; weekend> 2 -1 2 -5; weeks 3 1 -3 -5; weeks> 2 -2 0 -1; weight -10 -1 12 -9;
weight> -5 -5 4 -3; weird -5 5 -9 -4; well -4 4 -4 -5; well> 5 -5 -1 -2; went -7 0 -3 6; were 0 1 -2 -4;
wet -8 -5 -3 7; what 0 2 -2 -11; whatever -12 9 -6 -4; when -6 2 -6 1; whenever -5 4 -3 -2; where 2 -7 -1
4; which 6 -5 -6 -2; while -3 5 -2 -3; who 2 -2 -1 -3; whole -8 5 -6 4; why 0 2 -6 -3; wife -4 -7 -8 7;
wifi 5 -5 0 -2; will -3 1 0 -9; window -1 -6 -5 3; wipe -7 -11 -2 11; wire -3 4 -4 -3; wise 6 -4 -1 -1;
with 0 3 -3 -3; with> -1 2 -7 -4; without -9 6 -6 3; wk 5 -3 -3 0; woke -6 6 -5 3; woken -10 10 -2 -3;
won 4 0 0 -4; wool -6 2 -5 2; woozy -16 9 -6 -7; words -14 -4 -2 14; words> 0 -1 -2 3; work 8 -3 -2 -4;
work> 5 -1 -1 -3; working 10 -7 0 -4; works 6 -5 0 -1; worried 1 -2 -3 0; worse 4 1 -5 -8; worse> 6 -5 -2
-3; worst -5 -13 7 -10; worth 6 -1 -5 -1; would 4 -4 -5 -3; wrist 2 -4 2 -7; wrist> 2 -1 0 -1; wrists 3
-1 -1 0; write -2 -1 -2 3; writing -2 -1 2 -4; wrong -7 -1 -1 7; wrote 4 -3 0 -2; x 3 -1 -1 -1; x> 5 -2
-2 -2; xx 7 -2 -3 -5; yeah 6 -5 -4 -3; year -2 1 -8 0; years 5 -8 0 -10; yep 2 -6 -5 -2; yep> 6 -4 -4 -7;
yes 5 -7 -2 -2; yes> 10 -10 -3 -3; yesterday -4 -3 0 -2; yesterday> -1 0 -4 -6; yet 11 -3 -5 -3; yet> 7
-1 -3 -3; yoga 11 -12 0 -3; you 5 -4 -4 -3; you> 3 -1 -1 -1; young 4 -4 0 -2; your 7 0 -2 -4; yours 6 -3
-3 -4; yours> 6 -5 -4 -4; yup 8 -4 -2 -7; yup> 4 -1 -3 -1; zap -5 5 -6 -5; zero 7 -6 -2 -3; zilch 5 -4 -5
-4; zoom 4 -1 -2 -1; ✅ 2 -4 -2 0; ✅> 5 -4 -4 -5; ✌ -5 6 -7 -5; ✔ 6 -4 -3 -2; ✔> 3 -1 -1 -1; ❌ 5 -3 -3 -3;
❌> 5 -3 -3 -4; 🎉 4 -1 -2 -2; 🎉> 4 -1 -2 -2; 🏽 3 -1 -2 -2; 🏽> 3 -2 -2 -2; 👌 5 -4 -4 -4; 👌> 5 -4 -4 -4; 👍 7
-4 -3 -3; 👍> 6 -5 -2 -2; 👎 5 -3 -3 -3; 👎> 6 -3 -3 -4; 💀 2 -5 -4 -1; 💀> 2 -6 -5 -1; 💪 5 -4 -3 -3; 💪> 4 -3
-3 -3; 🔥 5 -4 -5 -5; 🔥> 3 -3 -3 -3; 😂 7 -4 -3 -3; 😂> 7 -2 -2 -4; 😊 4 -1 -1 -2; 😎 4 -3 -4 -3; 😎> 4 -3 -4
-3; 😩 5 -4 -5 -3; 😩> 5 -4 -6 -3; 😭 0 -4 -4 1; 😭> 7 -4 -5 -7; 😴 4 -3 -4 -3; 😴> 4 -3 -4 -3; 🙌 6 -5 -1 -2;
🙌> 6 -6 -1 -2; 🙏 5 -1 -2 -2; 🤒 5 -1 -2 -2; 🤷 5 -4 -4 -5; 🤷> 4 -3 -4 -4
"""
"""Each entry: a word of at least three replies ("<" first, ">" last, "#" a number, "_" every reply), and its weights in
the order of `suspicion.LEVELS`; 5 is one natural logarithm of the odds."""
