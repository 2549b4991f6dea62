@echo off
rem Starts Screedbook from the screedbook.jar that lies beside this file, in a window of its own: a Windows console is no
rem terminal that it could draw on. Commands such as "screedbook verify JOB" print in the console. Not tried on Windows
rem yet: only in the command interpreter of Wine, with a stand-in for Java.
setlocal
set "JAR=%~dp0screedbook.jar"
if not exist "%JAR%" goto nojar
set "JAVA=%~dp0runtime\bin\java.exe"
if exist "%JAVA%" goto found
if not defined JAVA_HOME goto path
set "JAVA=%JAVA_HOME:"=%\bin\java.exe"
if exist "%JAVA%" goto found
:path
set "JAVA="
for %%P in (java.exe) do set "JAVA=%%~$PATH:P"
if not defined JAVA goto nojava
:found
set "CLASSES=-Xshare:auto"
if not defined LOCALAPPDATA goto run
rem An archive of the loaded classes makes the start quicker. It is named by the size of the jar: a new jar gets a new one.
for %%F in ("%JAR%") do set "ARCHIVE=%LOCALAPPDATA%\screedbook\classes-%%~zF.jsa"
if not exist "%ARCHIVE%" goto none
set "CLASSES=-XX:SharedArchiveFile=%ARCHIVE%"
goto run
:none
rem The first desk leaves it; a command, or a desk that opens nothing, loads too little to be worth keeping.
for %%C in (new plan day findings verify carry key sign plant-list csv limits sheets season find archive schemas completion man sql -h --help -V --version) do if "%~1"=="%%C" goto run
set "JOB=%~1"
if not defined JOB set "JOB=."
if not "%JOB%"=="--demo" if not exist "%JOB%\job.json" goto run
if not exist "%LOCALAPPDATA%\screedbook" mkdir "%LOCALAPPDATA%\screedbook" >nul 2>nul
del /q "%LOCALAPPDATA%\screedbook\classes-*.jsa" >nul 2>nul
set "CLASSES=-XX:ArchiveClassesAtExit=%ARCHIVE%"
:run
"%JAVA%" -XX:+IgnoreUnrecognizedVMOptions -XX:+UseSerialGC -Xlog:disable -Xlog:all=off -Dsun.java2d.uiScale=1 "%CLASSES%" -cp "%JAR%" screedbook.Start %*
exit /b %ERRORLEVEL%
:nojar
echo screedbook: no "%JAR%"; build it with: mvn -DskipTests clean package 1>&2
exit /b 3
:nojava
echo screedbook: no Java here; install one of version 17 or later, or take the image that brings its own 1>&2
exit /b 3
